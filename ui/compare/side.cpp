// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/compare/side.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QVBoxLayout>

#include "ui/document/file_names.h"
#include "ui/document/rig_document.h"
#include "ui/strip/ruler.h"
#include "ui/strip/strip_view.h"
#include "ui/text/words.h"
#include "ui/theme/ground.h"
#include "ui/theme/pill_button.h"
#include "ui/theme/tab_order.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {
constexpr int kBadge = 26;
constexpr int kBadgeLeft = 16;
constexpr int kBar = 4;
}  // namespace

Side::Side(Look* look, RigDocument* document, AnalysisFeed* feed, QWidget* parent)
    : QWidget(parent), m_look(look), m_document(document), m_feed(feed) {
  m_ruler = new Ruler(this);
  m_strip = new StripView(look, document, feed, m_ruler, this);
  m_strip->setGuest(true);
  m_header = new QWidget(this);
  auto* row = new QHBoxLayout(m_header);
  row->setSpacing(4);
  const auto sentence = [&](PillButton*& button) {
    button = new PillButton(look, PillButton::Form::sentence, QString(), m_header);
    row->addWidget(button);
  };
  sentence(m_name);
  sentence(m_rod);
  sentence(m_water);
  row->addStretch(1);
  const auto plain = [&](PillButton*& button, const QString& words) {
    button = new PillButton(look, PillButton::Form::plain, words, m_header);
    row->addWidget(button);
  };
  plain(m_copy, QString());
  plain(m_open, tr("Open…"));
  plain(m_save, tr("Save"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(m_header);
  column->addWidget(m_strip, 1);
  tabAsLaidOut(this);
  connect(m_name, &PillButton::clicked, this, &Side::nameWanted);
  connect(m_rod, &PillButton::clicked, this, &Side::rodWanted);
  connect(m_water, &PillButton::clicked, this, &Side::waterWanted);
  connect(m_copy, &PillButton::clicked, this, &Side::copyWanted);
  connect(m_open, &PillButton::clicked, this, &Side::openWanted);
  connect(m_save, &PillButton::clicked, this, &Side::saveWanted);
  connect(document, &RigDocument::rigChanged, this, &Side::refresh);
  connect(document, &RigDocument::fileChanged, this, &Side::refresh);
  connect(look, &Look::changed, this, &Side::refresh);
  setLetter(Letter::a);
}

QString Side::letterWord() const {
  return m_letter == Letter::a ? QStringLiteral("A") : QStringLiteral("B");
}

void Side::setLetter(Letter letter) {
  m_letter = letter;
  const QString word = letterWord();
  const QString other = letter == Letter::a ? QStringLiteral("B") : QStringLiteral("A");
  setObjectName(QStringLiteral("side") + word);
  m_strip->setObjectName(QStringLiteral("strip") + word);
  m_name->setObjectName(QStringLiteral("name") + word);
  m_rod->setObjectName(QStringLiteral("rod") + word);
  m_water->setObjectName(QStringLiteral("water") + word);
  m_copy->setObjectName(QStringLiteral("copy") + word);
  m_open->setObjectName(QStringLiteral("open") + word);
  m_save->setObjectName(QStringLiteral("save") + word);
  m_strip->setAccessibleName(tr("Line %1, from the rod to the fly").arg(word));
  m_copy->setText(tr("Copy to %1").arg(other));
  m_copy->setAccessibleName(tr("Copy %1 to %2").arg(word, other));
  m_copy->setToolTip(tr("Makes %2 the same as %1; undo in %2 brings the old one back").arg(word, other));
  m_open->setAccessibleName(tr("Open a rig as %1").arg(word));
  m_open->setToolTip(m_open->accessibleName());
  m_save->setAccessibleName(tr("Save %1").arg(word));
  m_save->setToolTip(m_save->accessibleName());
  refresh();
}

void Side::setCurrent(bool current) {
  m_current = current;
  update();
}

void Side::refresh() {
  const Rig& rig = *m_document->shown();
  const QString name = shownName(rig.name, m_document->path(), tr("unnamed rig"));
  m_name->setText(m_document->isModified() ? tr("%1, not saved").arg(name) : name);
  m_rod->setText(rodSentence(rig, m_look->units()));
  m_water->setText(waterSentence(rig, m_look->units()));
  const QString word = letterWord();
  m_name->setToolTip(tr("%1: %2. Click to rename.").arg(word, m_name->text()));
  m_rod->setToolTip(tr("Rod of %1: %2. Click to change.").arg(word, m_rod->text()));
  m_water->setToolTip(tr("Water of %1: %2. Click to change.").arg(word, m_water->text()));
  for (PillButton* b : {m_name, m_rod, m_water, m_copy}) {
    b->setAccessibleName(b == m_copy ? b->accessibleName() : tr("%1: %2").arg(word, b->text()));
    b->updateGeometry();
  }
  m_header->layout()->setContentsMargins(m_look->px(kBadgeLeft + kBadge) + 4, 0, 8, 0);
  update();
}

void Side::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  const Colours& c = m_look->colours();
  paintGround(p, this, c.paper);
  const bool isA = m_letter == Letter::a;
  const QColor line = isA ? c.river : c.ochreLine;
  if (m_current) p.fillRect(QRectF(0, 0, kBar, height()), line);
  const double side = m_look->px(kBadge);
  const QRectF badge(m_look->px(kBadgeLeft) - 2, (m_header->height() - side) / 2.0, side, side);
  QPen pen(line, 2);
  if (!isA) pen.setDashPattern({2.5, 1.5});
  p.setPen(pen);
  p.setBrush(m_current ? QBrush(line) : QBrush(Qt::NoBrush));
  p.drawRoundedRect(badge, 6, 6);
  p.setFont(m_look->font(16, true));
  p.setPen(m_current ? c.paper : isA ? c.river : c.ochreWord);
  p.drawText(badge, Qt::AlignCenter, letterWord());
}

}  // namespace grainwise::ui
