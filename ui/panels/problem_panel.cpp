// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/problem_panel.h"

#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

#include "ui/text/problem_words.h"

namespace grainwise::ui {
namespace {
constexpr std::size_t kMostShown = 200;

QString line(const Problem& problem) {
  return problemLine(problem);
}
}  // namespace

ProblemPanel::ProblemPanel(Look* look, QWidget* parent) : QWidget(parent), m_look(look) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 4, 0, 4);
  m_title = new QLabel(this);
  m_title->setObjectName(QStringLiteral("problemTitle"));
  m_title->setTextFormat(Qt::PlainText);
  m_list = new QLabel;
  m_list->setObjectName(QStringLiteral("problemList"));
  m_list->setTextFormat(Qt::PlainText);
  m_list->setWordWrap(true);
  m_list->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  m_list->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  auto* scroll = new QScrollArea(this);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidget(m_list);
  // A scroll area makes its widget fill itself; the drawer's ground shall show.
  m_list->setAutoFillBackground(false);
  scroll->viewport()->setAutoFillBackground(false);
  column->addWidget(m_title);
  column->addWidget(scroll, 1);
  connect(look, &Look::changed, this, &ProblemPanel::applyLook);
  applyLook();
}

void ProblemPanel::show(const QString& title, const Problems& problems) {
  m_title->setText(title + QStringLiteral(". ") + tr("The open rig is as it was."));
  QStringList lines;
  for (const Problem& problem : problems) {
    if (std::size_t(lines.size()) == kMostShown) {
      lines.append(tr("and %n more", nullptr, int(problems.size() - kMostShown)));
      break;
    }
    lines.append(line(problem));
  }
  m_list->setText(lines.join(QLatin1Char('\n')));
}

void ProblemPanel::applyLook() {
  m_title->setFont(m_look->font(16, true));
  m_list->setFont(m_look->font(15));
}

}  // namespace grainwise::ui
