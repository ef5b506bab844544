// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/rod_panel.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <array>

#include "core/choose/start.h"
#include "core/mass/rod_fit.h"
#include "core/model/edits.h"
#include "core/model/limits.h"
#include "ui/document/rig_document.h"
#include "ui/strip/number_field.h"
#include "ui/text/problem_words.h"
#include "ui/text/quantities.h"

namespace grainwise::ui {
namespace {

struct StyleRow {
  Style style;
  const char* words;
  std::optional<GrainWindow> Rod::Windows::*window;
};
constexpr std::array<StyleRow, 4> kStyles{{
    {Style::shortHead, QT_TRANSLATE_NOOP("grainwise::ui::RodPanel", "Short heads"),
     &Rod::Windows::shortHead},
    {Style::fine, QT_TRANSLATE_NOOP("grainwise::ui::RodPanel", "Fine tapers"), &Rod::Windows::fine},
    {Style::longBelly, QT_TRANSLATE_NOOP("grainwise::ui::RodPanel", "Long bellies"),
     &Rod::Windows::longBelly},
    {Style::singleHand, QT_TRANSLATE_NOOP("grainwise::ui::RodPanel", "Single-hand lines"),
     &Rod::Windows::singleHand},
}};
constexpr int kMostFieldWidth = 150;

}  // namespace

RodPanel::RodPanel(Look* look, RigDocument* document, const SharedShelf& shelf, QWidget* parent)
    : QWidget(parent), m_look(look), m_document(document), m_shelf(shelf) {
  setObjectName(QStringLiteral("rodPanel"));
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(0, 8, 0, 8);
  grid->setHorizontalSpacing(16);
  grid->setVerticalSpacing(6);
  m_length = new NumberField(look, tr("Rod length"), Measure::length, limits::kRodLength, this);
  m_line = new NumberField(look, tr("Line number"), Measure::plain, limits::kLineNumber, this);
  for (NumberField* field : {m_length, m_line}) {
    field->setOptional(true);
    field->setWidths(0, kMostFieldWidth);
  }
  m_hands = new QComboBox(this);
  m_hands->addItems({tr("one hand"), tr("two hands")});
  m_hands->setAccessibleName(tr("Hands"));
  m_hands->setMinimumHeight(32);
  grid->addWidget(m_length, 0, 0, 2, 1);
  grid->addWidget(m_line, 0, 1, 2, 1);
  grid->addLayout(underLabel(tr("Hands"), m_hands), 0, 2, 2, 1, Qt::AlignTop);
  addWindowFields(grid);

  m_style = new QComboBox(this);
  for (const StyleRow& row : kStyles) m_style->addItem(tr(row.words));
  m_style->setAccessibleName(tr("Style of head"));
  m_style->setMinimumHeight(32);
  m_start = new QPushButton(tr("Start a rig for this rod"), this);
  m_start->setObjectName(QStringLiteral("startFromRod"));
  m_start->setMinimumHeight(36);
  m_start->setToolTip(tr("Head, tip and leader from the Shelf; the fly is yours to choose. Undo "
                         "brings the old rig back."));
  grid->addLayout(underLabel(tr("Head to start with"), m_style), 0, 8, 2, 1, Qt::AlignTop);
  grid->addWidget(m_start, 2, 8, Qt::AlignTop);
  m_words = new QLabel(this);
  m_words->setTextFormat(Qt::PlainText);
  m_words->setWordWrap(true);
  grid->addWidget(m_words, 4, 0, 1, 9);
  grid->setColumnStretch(7, 1);
  grid->setRowStretch(5, 1);

  editNumber(m_length, "length_ft", [](Rod& r, std::optional<double> v) {
    r.length = v ? std::optional(Feet(*v)) : std::nullopt;
  });
  editNumber(m_line, "line_number", [](Rod& r, std::optional<double> v) { r.lineNumber = v; });
  connect(m_hands, &QComboBox::activated, this, [this](int index) {
    Rod r = rod();
    r.hands = index + 1;
    edit({}, r);
  });
  connect(m_start, &QPushButton::clicked, this, &RodPanel::start);
  connect(document, &RigDocument::rigChanged, this, &RodPanel::refresh);
  connect(look, &Look::changed, this, &RodPanel::applyLook);
  applyLook();
}

/// A choice stands under its label as a number field does.
QVBoxLayout* RodPanel::underLabel(const QString& words, QWidget* choice) {
  auto* label = new QLabel(words, this);
  m_labels.append(label);
  return ui::underLabel(label, choice);
}

void RodPanel::editNumber(NumberField* field, const char* key,
                          const std::function<void(Rod&, std::optional<double>)>& put) {
  connect(field, &NumberField::typed, this, [this, key, put](const Typed& t) {
    Rod r = rod();
    put(r, t.value);
    keepDigits(r.kept, key, t.value, t.digits.toStdString());
    edit(QLatin1String(key), r);
  });
  connect(field, &NumberField::cleared, this, [this, key, put] {
    Rod r = rod();
    put(r, std::nullopt);
    keepDigits(r.kept, key, 0, {});
    edit(QLatin1String(key), r);
  });
}

void RodPanel::addWindowFields(QGridLayout* grid) {
  for (int i = 0; i < int(kStyles.size()); ++i) {
    const QString name = tr(kStyles[std::size_t(i)].words);
    auto* low = new NumberField(m_look, tr("%1 from").arg(name), Measure::mass, limits::kWindow, this);
    auto* high = new NumberField(m_look, tr("to"), Measure::mass, limits::kWindow, this);
    for (NumberField* field : {low, high}) {
      field->setOptional(true);
      field->setWidths(0, kMostFieldWidth);
      const bool isLow = field == low;
      connect(field, &NumberField::typed, this,
              [this, i, isLow](const Typed& t) { editWindow(i, isLow, t); });
      connect(field, &NumberField::cleared, this,
              [this, i, isLow] { editWindow(i, isLow, std::nullopt); });
    }
    const int row = i < 2 ? 0 : 2;
    const int column = 3 + 2 * (i % 2);
    grid->addWidget(low, row, column, 2, 1);
    grid->addWidget(high, row, column + 1, 2, 1);
    m_windows.append(qMakePair(low, high));
  }
}

Rod RodPanel::rod() const { return m_document->rig().rod.value_or(Rod{}); }

void RodPanel::edit(const QString& field, const Rod& rod) {
  m_document->apply(tr("Change the rod"), edits::withRod(m_document->rig(), rod),
                    field.isEmpty() ? QString() : QStringLiteral("rod/") + field);
}

/// A window enters the rig when both ends are there and in order; until then the other field says
/// what is wanted.
void RodPanel::editWindow(int style, bool low, const std::optional<Typed>& typed) {
  const auto [lowField, highField] = m_windows[style];
  Rod r = rod();
  auto windows = r.windows.value_or(Rod::Windows{});
  auto& window = windows.*(kStyles[std::size_t(style)].window);
  const auto other = parseTyped((low ? highField : lowField)->edit()->text(), Measure::mass,
                                m_look->units());
  if (other && !limits::kWindow.holds(other->value)) return;  // its field says so already
  if (!typed && !other) {
    window.reset();
  } else if (!typed || !other) {
    (low ? highField : lowField)->setError(tr("Both ends are needed."));
    return;
  } else {
    const Typed& first = low ? *typed : *other;
    const Typed& second = low ? *other : *typed;
    const Grains a(first.value);
    const Grains b(second.value);
    if (b < a) {
      (low ? lowField : highField)->refuse(tr("The upper end is below the lower one."));
      return;
    }
    window = GrainWindow{a, b};
    const std::string key = fileName(kStyles[std::size_t(style)].style);
    keepDigits(windows.kept, key + "/0", a.value(), first.digits.toStdString());
    keepDigits(windows.kept, key + "/1", b.value(), second.digits.toStdString());
  }
  lowField->setError({});
  highField->setError({});
  r.windows = windows == Rod::Windows{} ? std::nullopt : std::optional(windows);
  edit(QStringLiteral("window%1").arg(style), r);
}

void RodPanel::refresh() {
  const Rod r = m_document->shown()->rod.value_or(Rod{});
  m_length->setValue(r.length ? std::optional(r.length->value()) : std::nullopt,
                     QString::fromStdString(digitsOf(r.kept, "length_ft")));
  m_line->setValue(r.lineNumber, QString::fromStdString(digitsOf(r.kept, "line_number")));
  m_hands->setCurrentIndex(r.hands.value_or(2) - 1);
  for (int i = 0; i < m_windows.size(); ++i) {
    const GrainWindow* window = nullptr;
    if (r.windows) {
      const auto& own = (*r.windows).*(kStyles[std::size_t(i)].window);
      if (own) window = &*own;
    }
    const bool asks = window == nullptr && !r.window && r.lineNumber && r.hands.value_or(2) == 2;
    const auto usual = asks ? defaultWindow(kStyles[std::size_t(i)].style, *r.lineNumber) : std::nullopt;
    m_windows[i].first->setDerived(usual ? massNumber(usual->low, m_look->units()) : QString());
    m_windows[i].second->setDerived(usual ? massNumber(usual->high, m_look->units()) : QString());
    if (m_windows[i].first->edit()->hasFocus() || m_windows[i].second->edit()->hasFocus()) continue;
    m_windows[i].first->setValue(window != nullptr ? std::optional(window->low.value()) : std::nullopt);
    m_windows[i].second->setValue(window != nullptr ? std::optional(window->high.value()) : std::nullopt);
  }
  m_words->setText(tr("The grains on a rod are for the head alone, and the rod maker's figure comes first. Where "
                      "none is given, our usual range for the line number is taken."));
}

void RodPanel::start() {
  const auto rig = startFromRod(rod(), kStyles[std::size_t(m_style->currentIndex())].style, *m_shelf);
  if (!rig) {
    QString words = whatAndFix(rig.error().front());
    words[0] = words[0].toUpper();
    m_words->setText(words + QLatin1Char('.'));
    return;
  }
  Rig next = m_document->rig();
  next.parts = rig->parts;
  if (next.name.empty()) next.name = rig->name;
  m_document->apply(tr("Start from the rod"), next);
}

void RodPanel::focusFirst(bool startFrom) {
  NumberField* first = m_document->rig().rod ? nullptr : m_length;
  if (startFrom && first == nullptr) {
    m_start->setFocus(Qt::ShortcutFocusReason);
  } else {
    m_length->setFocus(Qt::ShortcutFocusReason);
  }
}

void RodPanel::applyLook() {
  for (QLabel* label : m_labels) label->setFont(m_look->font(14));
  m_words->setFont(m_look->font(14));
  for (QWidget* w : {static_cast<QWidget*>(m_hands), static_cast<QWidget*>(m_style),
                     static_cast<QWidget*>(m_start)}) {
    w->setFont(m_look->font(15));
  }
  refresh();
}

}  // namespace grainwise::ui
