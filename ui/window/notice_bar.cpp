// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/notice_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <algorithm>

#include "ui/theme/pill_button.h"

namespace grainwise::ui {

NoticeBar::NoticeBar(Look* look, QWidget* parent) : QWidget(parent), m_look(look) {
  setObjectName(QStringLiteral("notice"));
  m_row = new QHBoxLayout(this);
  m_row->setContentsMargins(16, 0, 16, 0);
  m_words = new QLabel(this);
  m_words->setObjectName(QStringLiteral("noticeWords"));
  m_words->setTextFormat(Qt::PlainText);
  m_words->setWordWrap(true);
  m_row->addWidget(m_words, 1);
  connect(look, &Look::changed, this, &NoticeBar::applyLook);
  applyLook();
  hide();
}

QString NoticeBar::told() const {
  return isHidden() ? QString() : m_words->text();
}

void NoticeBar::tell(const QString& key, const QString& words, const std::vector<Answer>& answers) {
  const Notice notice{key, words, answers};
  if (!isHidden() && m_key != key) {
    std::erase_if(m_waiting, [&](const Notice& n) { return n.key == key; });
    m_waiting.push_back(notice);
    return;
  }
  show(notice);
}

void NoticeBar::withdraw(const QString& key) {
  std::erase_if(m_waiting, [&](const Notice& n) { return n.key == key; });
  if (!isHidden() && m_key == key) next();
}

void NoticeBar::show(const Notice& notice) {
  for (PillButton* button : m_buttons) {
    button->hide();
    button->deleteLater();
  }
  m_buttons.clear();
  m_key = notice.key;
  m_words->setText(notice.words);
  m_words->setAccessibleName(notice.words);
  std::vector<Answer> answers = notice.answers;
  answers.emplace_back(answers.empty() ? tr("Close") : tr("Later"), [] {});
  for (std::size_t i = 0; i < answers.size(); ++i) {
    auto* button = new PillButton(m_look, PillButton::Form::sentence, answers[i].first, this);
    button->setObjectName(QStringLiteral("notice%1").arg(i));
    connect(button, &PillButton::clicked, this, [this, does = answers[i].second] {
      next();
      does();
    });
    m_row->addWidget(button);
    m_buttons.push_back(button);
  }
  setVisible(true);
}

void NoticeBar::next() {
  hide();
  if (m_waiting.empty()) return;
  const Notice notice = m_waiting.front();
  m_waiting.erase(m_waiting.begin());
  show(notice);
}

void NoticeBar::applyLook() {
  m_words->setFont(m_look->font(15));
  QPalette p = m_words->palette();
  p.setColor(QPalette::WindowText, m_look->colours().ink);
  m_words->setPalette(p);
  update();
}

void NoticeBar::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.fillRect(rect(), m_look->colours().band);
  p.fillRect(0, height() - 1, width(), 1, m_look->colours().edge);
}

}  // namespace grainwise::ui
