// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/clinic/card_form.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QFontMetrics>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <array>

#include "core/model/limits.h"

namespace grainwise::ui {
namespace {

constexpr std::array<CardShow, 6> kShows{CardShow::strip, CardShow::profile, CardShow::cast,
                                         CardShow::river, CardShow::compare, CardShow::text};
constexpr int kTarget = 44;
constexpr int kMostCharacters = limits::kStringChars;

QString rigWords(const std::optional<CardRig>& rig) {
  if (!rig) return CardForm::tr("none");
  if (const auto* name = std::get_if<std::string>(&*rig)) return QString::fromStdString(*name);
  const QString name = QString::fromStdString(std::get<Rig>(*rig).name);
  return CardForm::tr("%1 (in the deck)").arg(name.isEmpty() ? CardForm::tr("unnamed rig") : name);
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
    case CardShow::text:
      return CardForm::tr("Words alone");
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
  m_show = new QComboBox(this);
  m_show->setObjectName(QStringLiteral("cardShows"));
  m_show->setAccessibleName(tr("What the card shows"));
  m_show->setMinimumHeight(kTarget);
  for (const CardShow show : kShows) m_show->addItem(showWords(show));
  column->addWidget(m_show);
  m_rig = addRig(QStringLiteral("cardRig"), tr("Rig"));
  m_rigB = addRig(QStringLiteral("cardRigB"), tr("Rig B"));
  column->addStretch(1);
  connect(m_title, &QLineEdit::textEdited, this, [this](const QString& words) {
    change(tr("Change title"), [&](Card& card) { card.title = words.toStdString(); }, QStringLiteral("title"));
  });
  connectText(m_say, &Card::say, tr("Change line"));
  connectText(m_ask, &Card::ask, tr("Change question"));
  connectText(m_reveal, &Card::reveal, tr("Change answer"));
  connectText(m_notes, &Card::notes, tr("Change notes"));
  connect(m_show, qOverload<int>(&QComboBox::activated), this, [this](int at) {
    change(tr("Change picture"), [&](Card& card) { card.show = kShows[std::size_t(at)]; });
  });
  connectRig(m_rig, &Card::rig);
  connectRig(m_rigB, &Card::rigB);
  setCard(std::nullopt);
}

QPlainTextEdit* CardForm::addText(const QString& name, const QString& label, int lines) {
  auto* words = new QLabel(label, this);
  auto* field = new QPlainTextEdit(this);
  field->setObjectName(name);
  field->setAccessibleName(label);
  field->setTabChangesFocus(true);
  field->setFixedHeight(QFontMetrics(m_look->font(15)).lineSpacing() * lines + 14);
  words->setBuddy(field);
  layout()->addWidget(words);
  layout()->addWidget(field);
  return field;
}

CardForm::RigRow CardForm::addRig(const QString& name, const QString& label) {
  auto* row = new QHBoxLayout;
  auto* words = new QLabel(label, this);
  RigRow made{new QLabel(this), new QPushButton(tr("Bench"), this), new QPushButton(tr("File…"), this),
              new QPushButton(tr("None"), this)};
  made.name->setObjectName(name);
  made.name->setTextFormat(Qt::PlainText);
  made.name->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  made.bench->setObjectName(name + QStringLiteral("Bench"));
  made.bench->setToolTip(tr("Take the rig that stands on the bench into the deck"));
  made.file->setObjectName(name + QStringLiteral("File"));
  made.none->setObjectName(name + QStringLiteral("None"));
  row->addWidget(words);
  row->addWidget(made.name, 1);
  for (QPushButton* button : {made.bench, made.file, made.none}) {
    button->setMinimumHeight(kTarget);
    button->setAccessibleName(QStringLiteral("%1: %2").arg(label, button->text()));
    row->addWidget(button);
  }
  static_cast<QVBoxLayout*>(layout())->addLayout(row);
  return made;
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

void CardForm::connectRig(const RigRow& row, std::optional<CardRig> Card::*member) {
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
  for (std::size_t i = 0; i < kShows.size(); ++i) {
    if (kShows[i] == is.show) m_show->setCurrentIndex(int(i));
  }
  for (const auto& [label, rig] : {std::pair{m_rig.name, is.rig}, std::pair{m_rigB.name, is.rigB}}) {
    label->setText(rigWords(rig));
    label->setToolTip(label->text());
  }
  m_filling = false;
}

}  // namespace grainwise::ui
