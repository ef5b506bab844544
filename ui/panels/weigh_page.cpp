// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/weigh_page.h"

#include <QComboBox>
#include <QDate>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <array>
#include <utility>

#include "core/analysis/analysis.h"
#include "core/bench/cut_sheet.h"
#include "core/bench/typed.h"
#include "core/model/check.h"
#include "core/model/edits.h"
#include "core/model/limits.h"
#include "ui/charts/way_out.h"
#include "ui/document/own_store.h"
#include "ui/document/preferences.h"
#include "ui/document/rig_document.h"
#include "ui/strip/number_field.h"
#include "ui/text/bench_words.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

constexpr int kMassPlaces = 2;

std::optional<Grains> weighedMass(const Part& part) {
  return part.weighed ? std::optional(part.weighed->mass) : std::nullopt;
}

}  // namespace

WeighPage::WeighPage(Look* look, RigDocument* document, const OwnStore* store, QWidget* parent,
                     const Preferences* preferences)
    : MakePage(look, "makeWeigh", parent), m_document(document), m_store(store), m_preferences(preferences) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 4, 8, 4);
  row->setSpacing(20);
  auto* left = new QVBoxLayout;
  m_name = addLabel({}, Size::reading);
  m_name->setObjectName(QStringLiteral("weighName"));
  m_mass = new NumberField(look, tr("The scale says"), Measure::mass, limits::kWeighed, this);
  m_mass->edit()->setObjectName(QStringLiteral("weighMass"));
  m_length = new NumberField(look, tr("Measured length"), Measure::length, limits::kLength, this);
  m_length->edit()->setObjectName(QStringLiteral("weighLength"));
  m_mass->setOptional(true);
  m_length->setOptional(true);
  m_live = addLabel({}, Size::reading);
  m_live->setObjectName(QStringLiteral("weighLive"));
  m_scale = addChoice({tr("scale shows 0.1 gr"), tr("scale shows 1 gr"), tr("scale shows 0.1 g"),
                       tr("kitchen scale, 1 g")},
                      tr("Smallest step of the scale"), "weighScale");
  m_enter = addButton(tr("Enter: weigh and go on"), "weighEnter");
  m_forget = addButton(tr("Not weighed"), "weighForget");
  m_loops = addButton(tr("Count its loops"), "weighLoops");
  auto* fields = new QHBoxLayout;
  fields->addWidget(m_mass);
  fields->addWidget(m_length);
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(m_enter);
  buttons->addWidget(m_forget);
  buttons->addWidget(m_loops);
  left->addWidget(m_name);
  left->addLayout(fields);
  left->addWidget(m_live);
  left->addLayout(buttons);
  left->addStretch(1);
  row->addLayout(left, 2);
  m_table = new QTableWidget(0, 5, this);
  m_table->setObjectName(QStringLiteral("weighTable"));
  m_table->setAccessibleName(tr("Weigh-in"));
  m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
  m_table->setSelectionMode(QAbstractItemView::SingleSelection);
  m_table->setFocusPolicy(Qt::NoFocus);
  m_table->verticalHeader()->hide();
  m_table->horizontalHeader()->setHighlightSections(false);
  m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  m_table->setMinimumHeight(look->px(110));
  m_table->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);  // it scrolls, not the page
  for (const int column : {0, 4}) {  // words: a name, and the longest heading
    m_table->horizontalHeader()->setSectionResizeMode(column, QHeaderView::ResizeToContents);
  }
  auto* right = new QVBoxLayout;
  m_changes = addLabel({});
  m_changes->setObjectName(QStringLiteral("weighChanges"));
  right->addWidget(m_changes);
  right->addWidget(m_table, 1);
  right->addWidget(m_scale, 0, Qt::AlignLeft);
  row->addLayout(right, 4);
  (new WayOut(look, m_table))->add(tr("Weigh-in"), [this] { return table(); });
  connect(m_mass, &NumberField::typed, this, [this](const Typed& t) {
    m_massTyped = t.value;
    showNow();
  });
  connect(m_mass, &NumberField::cleared, this, [this] {
    m_massTyped.reset();
    showNow();
  });
  connect(m_length, &NumberField::typed, this, [this](const Typed& t) {
    m_lengthTyped = t.value;
    showNow();
  });
  connect(m_length, &NumberField::cleared, this, [this] {
    m_lengthTyped.reset();
    showNow();
  });
  connect(m_mass->edit(), &QLineEdit::returnPressed, this, &WeighPage::commit);
  connect(m_length->edit(), &QLineEdit::returnPressed, this, &WeighPage::commit);
  connect(m_enter, &QPushButton::clicked, this, &WeighPage::commit);
  connect(m_forget, &QPushButton::clicked, this, &WeighPage::forget);
  connect(m_loops, &QPushButton::clicked, this, &WeighPage::countLoops);
  connect(store, &OwnStore::rulesChanged, this, [this] {
    if (isVisible()) refresh();
  });
  connect(m_scale, &QComboBox::currentIndexChanged, this, &WeighPage::refresh);
  connect(m_table, &QTableWidget::cellClicked, this, [this](int r, int) { choose(std::size_t(r)); });
  connect(document, &RigDocument::rigChanged, this, [this] {
    if (isVisible()) refresh();
  });
  m_mass->edit()->installEventFilter(this);
  restyle();
}

WeighRules WeighPage::rules() const {
  const std::array<Grains, 4> steps{Grains(0.1), Grains(1), grainsOf(0.1, MassUnit::grams),
                                    grainsOf(1, MassUnit::grams)};
  WeighRules rules;
  rules.share = rulesOf(m_preferences).weighShare;
  rules.bench = m_store->rules();
  rules.scaleStep = steps[std::size_t(std::clamp(m_scale->currentIndex(), 0, 3))];
  return rules;
}

void WeighPage::start() {
  const auto& parts = m_document->rig().parts;
  std::size_t first = 0;
  while (first < parts.size() && (weighedMass(parts[first]) || parts[first].kind == PartKind::fly ||
                                  parts[first].kind == PartKind::runningLine)) {
    ++first;
  }
  choose(first < parts.size() ? first : 0);
}

void WeighPage::showEvent(QShowEvent* event) {
  MakePage::showEvent(event);
  refresh();
}

std::size_t WeighPage::after(std::size_t index) const {
  const std::size_t count = m_document->rig().parts.size();
  return count == 0 ? 0 : (index + 1) % count;
}

void WeighPage::clearTyped() {
  m_massTyped.reset();
  m_lengthTyped.reset();
  m_mass->edit()->clear();
  m_length->edit()->clear();
  m_mass->setError({});
}

/// What lies on the scale is that part wherever the line has put it since; of one that is gone nothing was weighed.
void WeighPage::followPart() {
  const std::vector<Part> before = std::exchange(m_line, m_document->rig().parts);
  if (before == m_line || m_current >= before.size()) return;
  const Part& part = before[m_current];
  std::vector<Part> changed = before;
  if (m_current < m_line.size()) changed[m_current] = m_line[m_current];
  if (changed == m_line) return;  // an edit of this part alone
  const auto there = std::find(m_line.begin(), m_line.end(), part);
  if (there != m_line.end()) {
    m_current = std::size_t(there - m_line.begin());
  } else {
    clearTyped();
  }
}

void WeighPage::choose(std::size_t index) {
  m_line = m_document->rig().parts;
  m_current = index;
  clearTyped();
  refresh();
  m_mass->edit()->setFocus();
}

OutTable WeighPage::table() const {
  const QString mass = massUnit(units());
  OutTable table;
  table.header = {tr("part"), tr("meant (%1)").arg(mass), tr("scale (%1)").arg(mass), tr("off"),
                  tr("a foot weighs (%1)").arg(lineMassUnit(units()))};
  const auto grains = [this](Grains value) {
    return figureCell(value.value(), Measure::mass, kMassPlaces, units());
  };
  for (const Part& part : m_document->rig().parts) {
    const auto weighed = weighedMass(part);
    const auto read = weighed ? weighIn(part, *weighed, {}, rules()) : tl::unexpected(Problem{});
    table.rows.push_back(
        {partWords(part, units()), grains(nominalMass(part, m_store->rules())), weighed ? grains(*weighed) : OutCell::none(),
         read ? OutCell(weighWords(*read, units())) : OutCell::none(),
         read && read->implied
             ? figureCell(read->implied->value(), Measure::lineMass, kMassPlaces, units())
             : OutCell::none()});
  }
  return table;
}

void WeighPage::refresh() {
  followPart();
  const auto& parts = m_document->rig().parts;
  if (m_current >= parts.size()) m_current = 0;
  m_table->setHorizontalHeaderLabels(
      {tr("part"), tr("meant"), tr("scale"), tr("off"), tr("a foot weighs")});
  QHeaderView* header = m_table->horizontalHeader();
  int least = 0;
  for (const int column : {1, 2, 3}) least = std::max(least, header->sectionSizeHint(column));
  header->setMinimumSectionSize(least);
  m_table->setRowCount(int(parts.size()));
  for (int i = 0; i < int(parts.size()); ++i) {
    const Part& part = parts[std::size_t(i)];
    const auto mass = weighedMass(part);
    const auto read = mass ? weighIn(part, *mass, {}, rules()) : tl::unexpected(Problem{});
    const auto put = [&](int column, const QString& words) {
      m_table->setItem(i, column, new QTableWidgetItem(words));
    };
    put(0, partWords(part, units()));
    put(1, massText(nominalMass(part, m_store->rules()), units()));
    put(2, mass ? massText(*mass, units()) : QString());
    put(3, read ? weighWords(*read, units()) : QString());
    put(4, read && read->implied ? lineMassText(*read->implied, units()) : QString());
    if (part.weighed && part.weighed->on) {
      m_table->item(i, 2)->setToolTip(QString::fromStdString(*part.weighed->on));
    }
  }
  m_table->setCurrentCell(int(m_current), 0);
  const bool any = !parts.empty();
  m_name->setText(any ? partWords(parts[m_current], units()) : tr("Nothing on the line to weigh"));
  m_mass->setEnabled(any);
  m_enter->setEnabled(any);
  m_length->setEnabled(any && parts[m_current].kind != PartKind::fly);
  m_forget->setEnabled(any && weighedMass(parts[m_current]).has_value());
  m_loops->setVisible(any && unstatedLoops(parts[m_current], m_store->rules()) > Grains(0));
  showNow();
}

void WeighPage::showNow() {
  const auto& parts = m_document->rig().parts;
  const bool typed = (m_massTyped || m_lengthTyped) && m_current < parts.size();
  const auto changed = typed ? weighedPart() : tl::unexpected(Problem{});
  m_changes->setText(changed ? changesWords(*changed) : QString());
  m_changes->setVisible(changed.has_value());
  if (!m_massTyped || m_current >= parts.size()) {
    const bool weighed = m_current < parts.size() && weighedMass(parts[m_current]);
    m_live->setText(weighed ? tr("weighed already; a new number takes its place")
                    : m_current < parts.size() ? meantWords(parts[m_current])
                                               : QString());
    return;
  }
  const auto length = m_lengthTyped ? std::optional(Feet(*m_lengthTyped)) : std::nullopt;
  const auto read = weighIn(parts[m_current], Grains(*m_massTyped), length, rules());
  if (!read) {
    m_live->setText(problemText(read.error()));
    return;
  }
  QString words = weighWords(*read, units());
  if (read->implied) words += tr("; %1").arg(lineMassText(*read->implied, units()));
  m_live->setText(words);
}

/// What the scale should show, and of what besides line that is made up.
QString WeighPage::meantWords(const Part& part) const {
  const BenchRules& bench = m_store->rules();
  const QString meant = massText(nominalMass(part, bench), units());
  const Grains unstated = unstatedLoops(part, bench);
  if (unstated > Grains(0)) {
    return tr("meant %1; its loops, %2, are not counted yet").arg(meant, massText(unstated, units()));
  }
  const Grains splices = spliceMass(part, bench);
  if (!part.fly && part.loopMass() > Grains(0) && splices > Grains(0)) {
    return tr("meant %1, of it loops %2 and splice %3")
        .arg(meant, massText(part.loopMass(), units()), massText(splices, units()));
  }
  return tr("meant %1: type what the scale shows, then Enter").arg(meant);
}

tl::expected<Part, Problem> WeighPage::weighedPart() const {
  const Part& before = m_document->rig().parts[m_current];
  Part part = before;
  if (m_lengthTyped && part.kind != PartKind::fly) {
    part = named(before, withMeasuredLength(part, Feet(*m_lengthTyped)), units());
  }
  if (!m_massTyped) return part;
  const auto read = weighIn(part, Grains(*m_massTyped), {}, rules());
  if (!read) return tl::unexpected(read.error());
  const std::string today = QDate::currentDate().toString(Qt::ISODate).toStdString();
  return weighedIn(part, Grains(*m_massTyped), today);
}

/// "Tip share: 21 % becomes 22 %": what the tiles will say otherwise.
QString WeighPage::changesWords(const Part& weighed) const {
  const Rig& rig = m_document->rig();
  const Rig after = edits::replaced(rig, m_current, weighed);
  Conditions conditions;
  conditions.rules = rulesOf(m_preferences);
  const Analysis was = analyse(rig, conditions);
  const Analysis is = analyse(after, conditions);
  QStringList words;
  for (const Reading reading : {Reading::headOnRod, Reading::junction, Reading::tipShare,
                                Reading::flyAgainstTip, Reading::depth}) {
    const TileWords old = tileWords(reading, rig, was, units());
    const TileWords now = tileWords(reading, after, is, units());
    if (old.number == now.number && old.verdict == now.verdict) continue;
    words.append(old.verdict == now.verdict
                     ? tr("%1: %2 becomes %3").arg(now.title, old.number, now.number)
                     : tr("%1: %2 becomes %3, %4").arg(now.title, old.number, now.number, now.verdict));
  }
  return words.isEmpty() ? tr("No reading of the rig changes.") : words.join(tr("; "));
}

void WeighPage::commit() {
  if (m_committing) return;
  const Rig& rig = m_document->rig();
  if (m_current >= rig.parts.size()) return;
  // What stands in a field and cannot be taken is never replaced by what stood there before.
  if (!m_mass->error().isEmpty() || !m_length->error().isEmpty()) return;
  if (!m_massTyped && !m_lengthTyped) return choose(after(m_current));
  const auto part = weighedPart();
  if (!part) return showNow();
  m_committing = true;
  m_document->apply(tr("Weigh %1").arg(partWords(*part, units())),
                    edits::replaced(rig, m_current, *part));
  m_committing = false;
  choose(after(m_current));
}

void WeighPage::forget() {
  const Rig& rig = m_document->rig();
  if (m_current >= rig.parts.size()) return;
  m_document->apply(tr("Take the weighing back"),
                    edits::replaced(rig, m_current, withoutWeighing(rig.parts[m_current])));
}

/// The loops that this bench makes, on this part alone; what the cut sheet's label counts already.
void WeighPage::countLoops() {
  const Rig& rig = m_document->rig();
  if (m_current >= rig.parts.size()) return;
  const Part& before = rig.parts[m_current];
  Part looped = before;
  looped.loops = withProposedLoops(withoutWeighing(before), m_store->rules()).loops;
  const Problems wrong = check(looped);
  if (!wrong.empty()) return m_live->setText(problemText(wrong.front()));
  m_document->apply(tr("Put loops on %1").arg(partWords(before, units())),
                    edits::replaced(rig, m_current, looped));
  m_mass->edit()->setFocus();
}

bool WeighPage::eventFilter(QObject* watched, QEvent* event) {
  if (watched == m_mass->edit() && event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    const std::size_t count = m_document->rig().parts.size();
    if (count > 0 && key == Qt::Key_Down) return choose(after(m_current)), true;
    if (count > 0 && key == Qt::Key_Up) return choose((m_current + count - 1) % count), true;
  }
  return MakePage::eventFilter(watched, event);
}

void WeighPage::keyPressEvent(QKeyEvent* event) {
  const QString text = event->text();
  if (text.isEmpty() || !text[0].isDigit() || !m_mass->isEnabled()) {
    return MakePage::keyPressEvent(event);
  }
  m_mass->edit()->setFocus();
  m_mass->edit()->insert(text);
  Q_EMIT m_mass->edit()->textEdited(m_mass->edit()->text());
}

void WeighPage::restyle() {
  MakePage::restyle();
  m_table->setFont(look()->font(15));
  m_table->horizontalHeader()->setFont(look()->font(14));
  m_table->verticalHeader()->setDefaultSectionSize(look()->px(28));
  if (isVisible()) refresh();
}

}  // namespace grainwise::ui
