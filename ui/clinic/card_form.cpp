// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/clinic/card_form.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QFontMetrics>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "core/model/fields.h"
#include "core/model/limits.h"
#include "ui/panels/elided_choice.h"
#include "ui/text/words.h"
#include "ui/theme/flow_row.h"

namespace grainwise::ui {
namespace {

constexpr int kTarget = 44;
constexpr int kGap = 6;  ///< between the buttons of a row
constexpr int kFieldMargins = 14;
constexpr int kMostGrown = 3;  ///< where there is room, a field is as many times its lines high
constexpr int kMostCharacters = limits::kStringChars;

/// Wants no more than its least lines, and takes what room there is.
class CardText : public QPlainTextEdit {
 public:
  using QPlainTextEdit::QPlainTextEdit;
  [[nodiscard]] QSize sizeHint() const override { return minimumSize(); }
};

QString rigWords(const std::optional<CardRig>& rig) {
  if (!rig) return CardForm::tr("none");
  if (const auto* name = std::get_if<std::string>(&*rig)) return QString::fromStdString(*name);
  const QString name = QString::fromStdString(std::get<Rig>(*rig).name);
  return CardForm::tr("%1 (in the deck)").arg(name.isEmpty() ? CardForm::tr("unnamed rig") : name);
}

/// "10 ft, 1/4 sinking, 11 gr/ft; ...": what lies side by side, or that there is nothing.
template <class T, class Name>
QString listWords(const std::vector<T>& things, const Name& name) {
  QStringList names;
  for (const T& thing : things) names.append(name(thing));
  return names.isEmpty() ? CardForm::tr("none") : names.join(QStringLiteral("; "));
}

QString text(const std::optional<std::string>& words) {
  return words ? QString::fromStdString(*words) : QString();
}

}  // namespace

QString showWords(CardShow show) {
  switch (show) {
    case CardShow::strip:
      return CardForm::tr("The line");
    case CardShow::profile:
      return CardForm::tr("What each foot weighs");
    case CardShow::cast:
      return CardForm::tr("The cast");
    case CardShow::river:
      return CardForm::tr("The river");
    case CardShow::compare:
      return CardForm::tr("Two rigs compared");
    case CardShow::flies:
      return CardForm::tr("Flies side by side");
    case CardShow::pools:
      return CardForm::tr("One rig in several pools");
    case CardShow::tips:
      return CardForm::tr("Several tips on one rig");
    case CardShow::text:
      return CardForm::tr("Words alone");
  }
  return {};
}

QString figureWords(std::optional<CardFigure> figure) {
  if (!figure) return CardForm::tr("Figures: where the rigs differ");
  switch (*figure) {
    case CardFigure::none:
      return CardForm::tr("No figures");
    case CardFigure::fly:
      return CardForm::tr("The wet fly's weight");
    case CardFigure::foot:
      return CardForm::tr("The heaviest foot");
    case CardFigure::joint:
      return CardForm::tr("The worst joint");
    case CardFigure::tipShare:
      return CardForm::tr("Tip share of the head");
    case CardFigure::flyAgainstTip:
      return CardForm::tr("Fly against tip");
    case CardFigure::head:
      return CardForm::tr("Head on rod");
    case CardFigure::line:
      return CardForm::tr("Rods of line");
    case CardFigure::range:
      return CardForm::tr("Range of the depth");
    case CardFigure::drift:
      return CardForm::tr("Depth when the line comes tight");
    case CardFigure::deepest:
      return CardForm::tr("Greatest depth of the swing");
    case CardFigure::across:
      return CardForm::tr("Depth on the way across");
    case CardFigure::underWater:
      return CardForm::tr("Line under water");
  }
  return {};
}

CardForm::CardForm(Look* look, QWidget* parent) : QWidget(parent), m_look(look) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  auto* titleLabel = new QLabel(tr("Title"), this);
  m_title = new QLineEdit(this);
  m_title->setObjectName(QStringLiteral("cardTitle"));
  m_title->setAccessibleName(tr("Title"));
  m_title->setMaxLength(kMostCharacters);
  m_title->setMinimumHeight(kTarget);
  titleLabel->setBuddy(m_title);
  column->addWidget(titleLabel);
  column->addWidget(m_title);
  m_say = addText(QStringLiteral("cardSay"), tr("The one line"), 2);
  m_ask = addText(QStringLiteral("cardAsk"), tr("Question"), 2);
  m_reveal = addText(QStringLiteral("cardReveal"), tr("Answer, on the next press"), 2);
  m_notes = addText(QStringLiteral("cardNote"), tr("Notes, for your screen only"), 3);
  m_show = addChoice(QStringLiteral("cardShows"), addWords(tr("What the card shows")));
  for (const CardShow show : allShows()) m_show->addItem(showWords(show));
  m_figureWords = addWords(tr("Figures with the answer"));
  m_figure = addChoice(QStringLiteral("cardFigure"), m_figureWords);
  m_figure->addItem(figureWords(std::nullopt));
  for (const CardFigure figure : allFigures()) m_figure->addItem(figureWords(figure));
  m_rig = addRow(QStringLiteral("cardRig"), tr("Rig"), true);
  m_rigB = addRow(QStringLiteral("cardRigB"), tr("Rig B"), true);
  m_parts = addRow(QStringLiteral("cardParts"), tr("Flies or tips"), false);
  m_pools = addRow(QStringLiteral("cardPools"), tr("Pools"), false);
  column->addStretch(0);  // what the fields do not take
  connect(m_title, &QLineEdit::textEdited, this, [this](const QString& words) {
    change(tr("Change title"), [&](Card& card) { card.title = words.toStdString(); }, QStringLiteral("title"));
  });
  connectText(m_say, &Card::say, tr("Change line"));
  connectText(m_ask, &Card::ask, tr("Change question"));
  connectText(m_reveal, &Card::reveal, tr("Change answer"));
  connectText(m_notes, &Card::notes, tr("Change notes"));
  connect(m_show, qOverload<int>(&QComboBox::activated), this, [this](int at) {
    change(tr("Change picture"), [&](Card& card) { card.show = allShows()[std::size_t(at)]; });
  });
  connect(m_figure, qOverload<int>(&QComboBox::activated), this, [this](int at) {
    change(tr("Change figures"), [&](Card& card) {
      card.figure = at == 0 ? std::nullopt : std::optional(allFigures()[std::size_t(at) - 1]);
    });
  });
  connectRig(m_rig, &Card::rig);
  connectRig(m_rigB, &Card::rigB);
  connectLists();
  setCard(std::nullopt);
}

QLabel* CardForm::addWords(const QString& label) {
  auto* words = new QLabel(label, this);
  words->setWordWrap(true);
  layout()->addWidget(words);
  return words;
}

QPlainTextEdit* CardForm::addText(const QString& name, const QString& label, int lines) {
  QLabel* words = addWords(label);
  auto* field = new CardText(this);
  field->setObjectName(name);
  field->setAccessibleName(label);
  field->setTabChangesFocus(true);
  field->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
  const auto fit = [this, field, lines] {
    const int line = QFontMetrics(m_look->font(15)).lineSpacing();
    field->setMinimumHeight(line * lines + kFieldMargins);
    field->setMaximumHeight(line * lines * kMostGrown + kFieldMargins);
  };
  connect(m_look, &Look::changed, field, fit);
  fit();
  words->setBuddy(field);
  static_cast<QVBoxLayout*>(layout())->addWidget(field, lines);
  return field;
}

QComboBox* CardForm::addChoice(const QString& name, QLabel* words) {
  auto* choice = new ElidedChoice(this);
  choice->setObjectName(name);
  choice->setAccessibleName(words->text());
  choice->setMinimumHeight(kTarget);
  choice->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  words->setBuddy(choice);
  layout()->addWidget(choice);
  return choice;
}

CardForm::Row CardForm::addRow(const QString& name, const QString& label, bool file) {
  auto* whole = new QWidget(this);
  auto* column = new QVBoxLayout(whole);
  column->setContentsMargins(0, 4, 0, 0);
  column->setSpacing(2);
  Row made{whole, label, new QLabel(whole), new QPushButton(tr("Bench"), whole),
           file ? new QPushButton(tr("File…"), whole) : nullptr, new QPushButton(tr("None"), whole)};
  made.name->setObjectName(name);
  made.name->setTextFormat(Qt::PlainText);
  made.name->setWordWrap(true);
  made.name->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Minimum);
  column->addWidget(made.name);
  auto* row = new FlowRow(kGap);
  for (const auto& [button, end] :
       {std::pair{made.bench, "Bench"}, std::pair{made.file, "File"}, std::pair{made.none, "None"}}) {
    if (button == nullptr) continue;
    button->setObjectName(name + QLatin1String(end));
    button->setMinimumHeight(kTarget);
    button->setAccessibleName(tr("%1: %2", "what of the card, where it comes from").arg(label, button->text()));
    row->addWidget(button);
  }
  column->addLayout(row);
  layout()->addWidget(whole);
  return made;
}

void CardForm::connectLists() {
  m_parts.bench->setToolTip(tr("Add the fly or the tip that is on the bench"));
  m_pools.bench->setToolTip(tr("Take the pools of the bench"));
  connect(m_parts.bench, &QPushButton::clicked, this, [this] {
    const auto rig = benchRig ? benchRig() : std::nullopt;
    if (!rig || !m_card) return;
    const PartKind kind = m_card->show == CardShow::flies ? PartKind::fly : PartKind::tip;
    const auto found = std::find_if(rig->parts.rbegin(), rig->parts.rend(),
                                    [kind](const Part& part) { return part.kind == kind; });
    if (found == rig->parts.rend() || m_card->parts.size() >= kMostOnCard) return;
    change(tr("Add the bench's part"), [&](Card& card) { card.parts.push_back(*found); });
  });
  connect(m_parts.none, &QPushButton::clicked, this, [this] {
    change(tr("Take the parts out"), [](Card& card) { card.parts.clear(); });
  });
  connect(m_pools.bench, &QPushButton::clicked, this, [this] {
    if (!benchPools) return;
    change(tr("Take the bench's pools"), [&](Card& card) {
      card.pools = benchPools();
      if (card.pools.size() > kMostOnCard) card.pools.resize(kMostOnCard);
    });
  });
  connect(m_pools.none, &QPushButton::clicked, this, [this] {
    change(tr("Take the pools out"), [](Card& card) { card.pools.clear(); });
  });
}

void CardForm::connectText(QPlainTextEdit* field, std::optional<std::string> Card::*member,
                           const QString& step) {
  connect(field, &QPlainTextEdit::textChanged, this, [this, field, member, step] {
    if (m_filling) return;
    const QString words = field->toPlainText().left(kMostCharacters);
    change(step, [&](Card& card) {
      card.*member = words.isEmpty() ? std::nullopt : std::optional(words.toStdString());
    }, step);
  });
}

void CardForm::connectRig(const Row& row, std::optional<CardRig> Card::*member) {
  row.bench->setToolTip(tr("Take the rig that is on the bench"));
  row.file->setToolTip(tr("Take a rig file from the deck's folder"));
  connect(row.bench, &QPushButton::clicked, this, [this, member] {
    const auto rig = benchRig ? benchRig() : std::nullopt;
    if (rig) change(tr("Take the bench's rig"), [&](Card& card) { card.*member = CardRig(*rig); });
  });
  connect(row.file, &QPushButton::clicked, this, [this, member] {
    const QString name = askRigFile ? askRigFile() : QString();
    if (name.isEmpty()) return;
    change(tr("Name a rig file"), [&](Card& card) { card.*member = CardRig(name.toStdString()); });
  });
  connect(row.none, &QPushButton::clicked, this, [this, member] {
    change(tr("Take the rig out"), [&](Card& card) { (card.*member).reset(); });
  });
}

void CardForm::change(const QString& step, const std::function<void(Card&)>& how, const QString& gesture) {
  if (!m_card || m_filling) return;
  Card card = *m_card;
  how(card);
  Q_EMIT edited(step, card, gesture);
}

void CardForm::setRow(const Row& row, const QString& words, bool shown) {
  row.name->setText(tr("%1: %2", "what of the card, its name").arg(row.label, words));
  row.whole->setVisible(shown);
}

void CardForm::setCard(const std::optional<Card>& card) {
  m_filling = true;
  m_card = card;
  setEnabled(card.has_value());
  const Card is = card.value_or(Card{});
  const QString title = QString::fromStdString(is.title);
  if (m_title->text() != title) m_title->setText(title);
  const std::array<std::pair<QPlainTextEdit*, QString>, 4> fields{{{m_say, text(is.say)},
                                                                   {m_ask, text(is.ask)},
                                                                   {m_reveal, text(is.reveal)},
                                                                   {m_notes, text(is.notes)}}};
  for (const auto& [field, words] : fields) {
    if (field->toPlainText() != words) field->setPlainText(words);
  }
  const auto& shows = allShows();
  m_show->setCurrentIndex(int(std::find(shows.begin(), shows.end(), is.show) - shows.begin()));
  const auto& figures = allFigures();
  m_figure->setCurrentIndex(
      is.figure ? int(std::find(figures.begin(), figures.end(), *is.figure) - figures.begin()) + 1 : 0);
  // Words, flies, pools and tips bear their own numbers.
  const bool figured = is.show != CardShow::text && is.show != CardShow::flies && is.show != CardShow::pools &&
                       is.show != CardShow::tips;
  m_figure->setVisible(figured);
  m_figureWords->setVisible(figured);
  setRow(m_rig, rigWords(is.rig), is.show != CardShow::text);
  setRow(m_rigB, rigWords(is.rigB),
         is.show != CardShow::text && is.show != CardShow::pools && is.show != CardShow::tips);
  setRow(m_parts, listWords(is.parts, [this](const Part& part) { return partWords(part, m_look->units()); }),
         is.show == CardShow::flies || is.show == CardShow::tips);
  setRow(m_pools, listWords(is.pools, [](const Pool& pool) { return QString::fromStdString(pool.name); }),
         is.show == CardShow::pools || is.show == CardShow::tips);
  m_filling = false;
}

}  // namespace grainwise::ui
