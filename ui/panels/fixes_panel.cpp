// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/fixes_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QStandardItemModel>
#include <QStyledItemDelegate>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/charts/way_out.h"
#include "ui/document/pool_book.h"
#include "ui/document/rig_document.h"
#include "ui/panels/choice_list.h"
#include "ui/panels/panel_tables.h"
#include "ui/text/choice_words.h"
#include "ui/text/words.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {

constexpr int kRowHeight = 44;
constexpr int kInset = 8;

/// The change, and below it what it repairs.
class FixRow : public QStyledItemDelegate {
 public:
  FixRow(Look* look, QObject* parent) : QStyledItemDelegate(parent), m_look(look) {}

  void paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const Colours& c = m_look->colours();
    const QStringList lines = index.data(Qt::DisplayRole).toString().split(QLatin1Char('\n'));
    const bool can = index.flags() & Qt::ItemIsEnabled;
    const bool current = can && (option.state & QStyle::State_Selected);
    p->save();
    if (current || (can && (option.state & QStyle::State_MouseOver))) p->fillRect(option.rect, c.card);
    if (current && (option.state & QStyle::State_HasFocus)) {
      p->setPen(QPen(c.river, 2));
      p->drawRect(QRectF(option.rect).adjusted(1, 1, -1, -1));
    }
    QRectF line = QRectF(option.rect).adjusted(m_look->px(kInset), 2, -m_look->px(kInset), -2);
    line.setHeight(line.height() / 2);
    for (qsizetype i = 0; i < lines.size() && i < 2; ++i) {
      p->setFont(m_look->font(14, can && i == 0));
      p->setPen(can && i == 0 ? c.ink : c.slate);
      p->drawText(line, Qt::AlignVCenter | Qt::AlignLeft,
                  p->fontMetrics().elidedText(lines[i], Qt::ElideRight, int(line.width())));
      line.translate(0, line.height());
    }
    p->restore();
  }
  [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const override {
    return {m_look->px(200), m_look->px(kRowHeight)};
  }

 private:
  Look* m_look;
};

}  // namespace

FixesPanel::FixesPanel(Look* look, RigDocument* document, AnalysisFeed* feed, PoolBook* pools,
                       const SharedShelf& shelf, QWidget* parent)
    : QWidget(parent), m_look(look), m_document(document), m_feed(feed), m_pools(pools),
      m_shelf(shelf) {
  setObjectName(QStringLiteral("fixesPanel"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 4, 0, 4);
  column->setSpacing(2);
  m_message = new QLabel(this);
  m_message->setObjectName(QStringLiteral("fixesMessage"));
  m_message->setTextFormat(Qt::PlainText);
  m_message->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  column->addWidget(m_message);
  auto* row = new QHBoxLayout;
  row->setSpacing(24);
  column->addLayout(row, 1);
  m_now = addColumn("fixesNow", tr("From the wallet, now"), &Fixes::now);
  m_later = addColumn("fixesLater", tr("At the bench, later"), &Fixes::later);
  for (const Column* c : {&m_now, &m_later}) {
    auto* side = new QVBoxLayout;
    side->setSpacing(0);
    side->addWidget(c->title);
    side->addWidget(c->view, 1);
    row->addLayout(side, 1);
  }
  connect(document, &RigDocument::rigChanged, this, &FixesPanel::ask);
  connect(feed, &AnalysisFeed::analysisChanged, this, &FixesPanel::ask);
  connect(pools, &PoolBook::changed, this, [this] {
    m_asked.reset();
    ask();
  });
  connect(&m_runner, &HeavyRunner::finished, this, &FixesPanel::take);
  connect(look, &Look::changed, this, &FixesPanel::applyLook);
  applyLook();
}

FixesPanel::Column FixesPanel::addColumn(const char* name, const QString& title,
                                         std::vector<Fix> Fixes::*list) {
  Column c;
  c.title = new QLabel(title, this);
  c.view = new PreviewList(this);
  c.view->setObjectName(QLatin1String(name));
  c.view->setAccessibleName(title);
  c.view->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
  c.view->setSpacing(1);
  c.view->setTakenByClick(true);
  c.view->setItemDelegate(new FixRow(m_look, c.view));
  c.model = new QStandardItemModel(c.view);
  c.view->setModel(c.model);
  c.list = list;
  (new WayOut(m_look, c.view))->add(title, [this, list] {
    return fixesTable(m_answer ? m_answer->fixes.*list : std::vector<Fix>(), m_look->units());
  });
  connect(c.view, &PreviewList::previewed, this, [this, c](int row) { preview(c, row); });
  connect(c.view, &PreviewList::taken, this, [this, c](int row) { make(c, row); });
  return c;
}

QString FixesPanel::message() const { return m_message->text(); }

void FixesPanel::setShelf(const SharedShelf& shelf) {
  if (shelf == m_shelf) return;
  m_shelf = shelf;
  m_asked.reset();
  ask();
}

void FixesPanel::setWallet(const Shelf& wallet) {
  m_wallet = wallet.parts.empty() ? std::nullopt : std::optional(wallet);
  m_asked.reset();
  ask();
}

void FixesPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  ask();
}

void FixesPanel::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  m_document->setPreview(std::nullopt);
}

void FixesPanel::ask() {
  if (!isVisible()) return;
  const Rig& rig = m_document->rig();
  Conditions by = m_feed->conditions();
  by.strokeReference.reset();  // the rig as it stands is the reference here
  if (m_asked && *m_asked == rig && m_askedBy == by) return;
  m_asked = rig;
  m_askedBy = by;
  const FixQuestion question{rig, *m_shelf, m_wallet, m_pools->poolOf(rig), by};
  m_runner.start([question](const std::stop_token& stop, const HeavyRunner::Progress& tell)
                     -> HeavyRunner::Result {
    auto answer = std::make_shared<Answer>(Answer{question.rig, fixesFor(question, stop, tell)});
    return answer->fixes.stopped ? nullptr : answer;
  });
}

void FixesPanel::take(const std::shared_ptr<const void>& result) {
  m_answer = std::static_pointer_cast<const Answer>(result);
  fill();
  Q_EMIT answered();
}

/// What is wrong; of a line that lacks a head or a fly first that, for little is judged without them.
QString FixesPanel::messageText() const {
  QStringList sentences;
  const Fixes& fixes = m_answer->fixes;
  if (fixes.need != ChoiceNeed::none) sentences << needWords(fixes.need);
  if (!fixes.nothingWrong) {
    sentences << tr("Wrong: %1. One change, and what it repairs:").arg(readingList(fixes.faults));
  } else if (!fixes.watches.empty()) {
    sentences << (sentences.isEmpty() ? tr("Nothing is wrong. To be watched: %1.")
                                      : tr("To be watched: %1."))
                     .arg(readingList(fixes.watches));
  } else if (sentences.isEmpty()) {
    sentences << tr("Nothing is wrong, and nothing is to be watched.");
  }
  return sentences.join(QLatin1Char(' '));
}

void FixesPanel::fill() {
  if (!m_answer) return;
  m_message->setText(messageText());
  m_message->setToolTip(m_message->text());
  fill(m_now);
  fill(m_later);
}

void FixesPanel::fill(const Column& column) {
  const Fixes& fixes = m_answer->fixes;
  column.model->clear();
  for (const Fix& fix : fixes.*column.list) {
    auto* item = new QStandardItem(
        tr("%1\n%2", "a change, what it repairs").arg(changeWords(fix.change, m_look->units()),
                                                        fixWords(fix)));
    item->setEditable(false);
    item->setToolTip(item->text());
    column.model->appendRow(item);
  }
  const bool empty = column.model->rowCount() == 0;
  if (!empty) return;
  auto* none = new QStandardItem(fixes.need != ChoiceNeed::none ? tr("nothing to try yet")
                                 : fixes.nothingWrong ? tr("nothing to do")
                                                      : tr("no single change mends it"));
  none->setFlags(Qt::NoItemFlags);
  column.model->appendRow(none);
}

/// The change of a row. None once the rig is another than the one it was found for: its rig would undo what was
/// done since. New ones are on their way then.
const Fix* FixesPanel::offered(const Column& column, int row) const {
  if (!m_answer || row < 0 || m_answer->asked != m_document->rig()) return nullptr;
  const auto& list = m_answer->fixes.*column.list;
  return std::size_t(row) < list.size() ? &list[std::size_t(row)] : nullptr;
}

/// The rig that a change makes. A part that is cut or tied anew loses a name that told its old figures.
Rig FixesPanel::made(const Fix& fix) const {
  const ChangeKind kind = fix.change.kind;
  const bool samePart = kind == ChangeKind::cutTip || kind == ChangeKind::trimHead || kind == ChangeKind::leaderLength;
  Rig rig = fix.after;
  if (!samePart) return rig;
  const auto& before = m_document->rig().parts;
  for (std::size_t i = 0; i < std::min(before.size(), rig.parts.size()); ++i) {
    rig.parts[i] = named(before[i], rig.parts[i], m_look->units());
  }
  return rig;
}

void FixesPanel::preview(const Column& column, int row) {
  const Fix* fix = offered(column, row);
  m_document->setPreview(fix ? std::optional(made(*fix)) : std::nullopt);
}

void FixesPanel::make(const Column& column, int row) {
  const Fix* fix = offered(column, row);
  if (fix) m_document->apply(changeStep(fix->change), made(*fix));
}

void FixesPanel::applyLook() {
  m_message->setFont(m_look->font(15));
  QPalette p = m_look->palette();
  p.setColor(QPalette::Base, m_look->colours().band);
  for (const Column* c : {&m_now, &m_later}) {
    c->title->setFont(m_look->font(15, true));
    c->view->setFont(m_look->font(14));
    c->view->setPalette(p);
  }
  fill();
}

}  // namespace grainwise::ui
