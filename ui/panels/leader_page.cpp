// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/leader_page.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/bench/own_shelf.h"
#include "core/mass/profile.h"
#include "core/model/limits.h"
#include "ui/document/own_store.h"
#include "ui/document/rig_document.h"
#include "ui/panels/part_drawing.h"
#include "ui/strip/number_field.h"
#include "ui/text/bench_words.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

constexpr Limit kPacket{"packet's strength", "lb", 0, 200, true};

/// The whole leader as one part, so that one drag carries it.
Part asOnePart(const Leader& leader) {
  Part whole;
  whole.kind = PartKind::leader;
  whole.style = Style::plain;
  for (const Part& part : partsOf(leader)) {
    whole.sections.insert(whole.sections.end(), part.sections.begin(), part.sections.end());
  }
  return whole;
}

}  // namespace

LeaderPage::LeaderPage(Look* look, RigDocument* document, OwnStore* store, QWidget* parent)
    : MakePage(look, "makeLeader", parent), m_document(document), m_store(store) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 4, 8, 4);
  column->setSpacing(6);
  m_fields = new QWidget(this);
  auto* fields = new QHBoxLayout(m_fields);
  fields->setContentsMargins(0, 0, 0, 0);
  fields->setSpacing(12);
  m_line = addChoice({tr("two-hand line"), tr("single-hand line"), tr("sink tip")},
                     tr("What the leader is tied to"), "leaderLine");
  m_tippet = addChoice({}, tr("Tippet"), "leaderTippet");
  m_tippet->setMinimumWidth(look->px(170));
  m_pieces = addChoice({tr("one piece"), tr("two pieces")}, tr("Pieces"), "leaderPieces");
  m_pieces->setCurrentIndex(1);
  m_length = new NumberField(look, tr("Length"), Measure::length, limits::kLength, this);
  m_lineTip = new NumberField(look, tr("Line's tip, diameter"), Measure::diameter, limits::kDiameter,
                              this);
  m_packet = new NumberField(look, tr("Tippet's packet, lb"), Measure::plain, kPacket, this);
  m_lineTip->setOptional(true);
  m_packet->setOptional(true);
  m_length->edit()->setObjectName(QStringLiteral("leaderLength"));
  m_lineTip->edit()->setObjectName(QStringLiteral("leaderLineTip"));
  m_packet->edit()->setObjectName(QStringLiteral("leaderPacket"));
  for (NumberField* field : {m_length, m_lineTip, m_packet}) {
    field->setWidths(0, look->px(150));
  }
  m_spools = addButton(tr("To the spools"), "leaderSpools");
  m_place = addButton(tr("Put it on the line"), "leaderPlace");
  m_keep = addButton(tr("Keep it among my parts"), "leaderKeep");
  m_piecesNamed = underName(m_pieces, tr("Pieces"));
  fields->addWidget(underName(m_line, tr("Tied to")));
  fields->addWidget(m_length);
  fields->addWidget(underName(m_tippet, tr("Tippet")));
  fields->addWidget(m_piecesNamed);
  fields->addWidget(m_lineTip);
  fields->addWidget(m_packet);
  fields->addStretch(1);
  column->addWidget(m_fields);
  m_words = addLabel({});
  m_words->setObjectName(QStringLiteral("leaderWords"));
  m_drawing = new LeaderDrawing(look, this);
  m_drawing->setObjectName(QStringLiteral("leaderDrawing"));
  m_drawing->setMinimumHeight(look->px(116));
  m_advice = addLabel({});
  column->addWidget(m_drawing);
  auto* said = new QHBoxLayout;
  said->setSpacing(12);
  said->addWidget(m_words, 1);
  said->addWidget(m_place, 0, Qt::AlignTop);
  said->addWidget(m_keep, 0, Qt::AlignTop);
  column->addLayout(said);
  column->addWidget(m_spools, 0, Qt::AlignLeft);
  column->addWidget(m_advice);
  column->addStretch(1);
  m_length->setValue(m_lengthTyped);
  connect(m_length, &NumberField::typed, this, [this](const Typed& t) {
    m_lengthTyped = t.value;
    refresh();
  });
  const auto follow = [this](NumberField* field, std::optional<double>& typed) {
    connect(field, &NumberField::typed, this, [this, &typed](const Typed& t) {
      typed = t.value;
      refresh();
    });
    connect(field, &NumberField::cleared, this, [this, &typed] {
      typed.reset();
      refresh();
    });
  };
  follow(m_lineTip, m_lineTipTyped);
  follow(m_packet, m_packetTyped);
  connect(m_line, &QComboBox::currentIndexChanged, this, [this](int index) {
    m_lengthTyped = index == 2 ? 4 : index == 1 ? 9 : 13;
    m_length->setValue(m_lengthTyped);
    refresh();
  });
  for (QComboBox* box : {m_tippet, m_pieces}) {
    connect(box, &QComboBox::currentIndexChanged, this, &LeaderPage::refresh);
  }
  connect(m_spools, &QPushButton::clicked, this, &LeaderPage::spoolsWanted);
  connect(m_place, &QPushButton::clicked, this, &LeaderPage::place);
  connect(m_keep, &QPushButton::clicked, this, &LeaderPage::keep);
  connect(m_drawing, &PartDrawing::placed, this, &LeaderPage::place);
  connect(store, &OwnStore::spoolsChanged, this, [this] {
    fillTippets();
    refresh();
  });
  connect(store, &OwnStore::rulesChanged, this, &LeaderPage::refresh);
  connect(document, &RigDocument::rigChanged, this, [this] {
    if (isVisible()) refresh();
  });
  fillTippets();
  restyle();
}

void LeaderPage::showEvent(QShowEvent* event) {
  MakePage::showEvent(event);
  refresh();
}

std::vector<LeaderStock> LeaderPage::stock() const { return leaderStock(m_store->spools()); }

void LeaderPage::fillTippets() {
  const QSignalBlocker quiet(m_tippet);
  // Spools come and go: what was chosen is known by what it is, not by its place among them.
  const QVariant before = m_tippet->currentData();
  const auto was = before.isValid() ? std::optional(m_offered[std::size_t(before.toInt())]) : std::nullopt;
  m_tippet->clear();
  const auto all = stock();
  m_offered = all;
  int chosen = -1;
  for (std::size_t i = 0; i < all.size(); ++i) {
    const QString size = diameterText(all[i].diameter, units());
    const double x = xOf(all[i].diameter);
    const QString sizes = x >= 0 ? tr("%1, %2X").arg(size, numberText(x, 1)) : size;
    m_tippet->addItem(all[i].material == Material::nylon ? tr("nylon %1").arg(sizes)
                                                         : tr("fluoro %1").arg(sizes),
                      int(i));
    if (was ? was->diameter == all[i].diameter && was->material == all[i].material
            : std::abs(all[i].diameter.value() - 0.013) < 1e-9) {
      chosen = int(i);
    }
  }
  m_tippet->setCurrentIndex(chosen);
}

std::optional<GrainsPerFoot> LeaderPage::lineTipMass() const {
  const Rig& rig = m_document->rig();
  const MassProfile profile = massProfile(rig);
  std::optional<GrainsPerFoot> last;
  for (const ProfileSpan& span : profile.spans) {
    const PartKind kind = rig.parts[span.part].kind;
    if (kind == PartKind::head || kind == PartKind::tip) last = span.properties.mass.flyEnd;
  }
  return last;
}

LeaderWish LeaderPage::wish() const {
  LeaderWish wish;
  wish.line = m_line->currentIndex() == 1   ? LeaderLine::singleHand
              : m_line->currentIndex() == 2 ? LeaderLine::sinkTip
                                            : LeaderLine::twoHand;
  wish.length = Feet(m_lengthTyped);
  wish.pieces = m_pieces->currentIndex() + 1;
  if (m_lineTipTyped) wish.lineTip = Inches(*m_lineTipTyped);
  wish.lineTipMass = lineTipMass();
  const auto all = stock();
  const int tippet = m_tippet->currentData().toInt();
  if (m_tippet->currentIndex() >= 0 && tippet < int(all.size())) {
    wish.tippet = all[std::size_t(tippet)].diameter;
    wish.tippetMaterial = all[std::size_t(tippet)].material;
  }
  return wish;
}

void LeaderPage::refresh() {
  m_lineTip->setVisible(m_line->currentIndex() == 1);
  m_piecesNamed->setVisible(m_line->currentIndex() == 2);
  if (const auto mass = lineTipMass(); mass && m_line->currentIndex() == 1) {
    m_lineTip->setDerived(diameterText(floatingDiameter(*mass), units()));
  }
  auto all = stock();
  // With nothing to tie from, only how to begin.
  for (QWidget* each : {m_fields, static_cast<QWidget*>(m_drawing), static_cast<QWidget*>(m_place),
                        static_cast<QWidget*>(m_keep)}) {
    each->setVisible(!all.empty());
  }
  m_spools->setVisible(all.empty());
  const int tippet = m_tippet->currentData().toInt();
  if (m_packetTyped && m_tippet->currentIndex() >= 0 && tippet < int(all.size())) {
    all[std::size_t(tippet)].packetPounds = m_packetTyped;
  }
  const auto built = buildLeader(wish(), all, m_store->rules());
  m_leader = built ? std::optional(*built) : std::nullopt;
  for (QPushButton* button : {m_place, m_keep}) button->setEnabled(m_leader.has_value());
  QList<LeaderDrawing::Piece> pieces;
  if (!m_leader) {
    m_drawing->setPieces({});
    m_drawing->setPart({}, tr("No leader"));
    const bool empty = all.empty();
    m_words->setText(empty ? tr("No nylon or fluorocarbon on the spools: read or write down your "
                                "spools on the Spools page.")
                           : problemText(built.error()));
    m_advice->clear();
    return;
  }
  for (const LeaderPiece& piece : m_leader->pieces) {
    pieces.append({piece.finished.value(), piece.diameter.value(),
                   tr("%1, %2").arg(diameterText(piece.diameter, units()),
                                    tapeText(piece.finished, units())),
                   tr("cut %1, %2").arg(tapeText(piece.cut, units()), poundsText(piece.strength)),
                   piece.material == Material::fluorocarbon});
  }
  m_drawing->setPieces(pieces);
  const QString sum = tr("%1 pieces, %2, %3. %4.")
                          .arg(m_leader->pieces.size())
                          .arg(tapeText(Feet(m_lengthTyped), units()), massRangeText(*m_leader),
                               weakestWords(*m_leader, units()));
  m_drawing->setPart(asOnePart(*m_leader), sum);
  QStringList words{sum};
  if (m_leader->longForSinkTip) words.append(tr("Long behind a sink tip: the fly rides up."));
  if (m_leader->shortForSinkTip) words.append(tr("Short: the fly follows the tip closely."));
  if (m_leader->notEnoughLeft) words.append(tr("A spool holds less than this takes."));
  m_words->setText(words.join(QLatin1Char(' ')));
  m_advice->setText(tr("Usual for the trade, not a rule. Glasses on when you test a knot."));
  takeFly();
}

/// "2.9–3.3 gr": nylon is not drawn truer.
QString LeaderPage::massRangeText(const Leader& leader) const {
  const GrainsRange range = massRange(leader);
  const auto number = [this](Grains mass) {
    return numberText(shownValue(mass.value(), Measure::mass, units()), units().grams ? 2 : 1);
  };
  return tr("%1–%2 %3", "a range with its unit").arg(number(range.low), number(range.high), massUnit(units()));
}

/// What the trade ties to the hook of the fly on the line.
void LeaderPage::takeFly() {
  const auto fly = m_document->rig().flyIndex();
  if (!fly || !m_document->rig().parts[*fly].fly) return;
  const auto hook = m_document->rig().parts[*fly].fly->hook;
  const auto advice = hook ? tippetFor(*hook) : std::nullopt;
  if (!advice) return;
  const QString name = QString::fromStdString(*hook);
  const QString range = advice->lowX
                            ? tr("%1X to %2X").arg(numberText(*advice->lowX, 1), numberText(*advice->highX, 1))
                            : tr("%1 to %2 lb").arg(numberText(*advice->lowPounds, 0),
                                                    numberText(*advice->highPounds, 0));
  m_advice->setText(tr("For a hook of size %1 usually %2 of tippet. %3").arg(name, range, m_advice->text()));
}

void LeaderPage::place() {
  if (!m_leader) return;
  m_document->apply(tr("Tie a new leader"), withLeader(m_document->rig(), *m_leader));
}

void LeaderPage::keep() {
  if (!m_leader) return;
  Part part = asOnePart(*m_leader);
  const LeaderPiece& butt = m_leader->pieces.front();
  const LeaderPiece& tippet = m_leader->pieces.back();
  part.name = tr("%1, %2 to %3", "a leader, its butt, its tippet")
                  .arg(partWords(part, units()), diameterText(butt.diameter, units()), diameterText(tippet.diameter, units()))
                  .toStdString();
  part.group = tr("My leaders").toStdString();
  m_store->setOwn(ownShelf::with(m_store->own(), part, m_store->generic()));
  m_words->setText(tr("Kept among my parts."));
}

void LeaderPage::restyle() {
  MakePage::restyle();
  m_length->setValue(m_lengthTyped);
  fillTippets();
  if (isVisible()) refresh();
}

}  // namespace grainwise::ui
