// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/cut_page.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/io/rig_file.h"
#include "core/io/shelf_file.h"
#include "ui/charts/diagram_access.h"
#include "ui/charts/way_out.h"
#include "ui/document/own_store.h"
#include "ui/document/rig_document.h"
#include "ui/panels/cut_drawing.h"
#include "ui/panels/loop_habits.h"
#include "ui/panels/panel_tables.h"
#include "ui/text/bench_words.h"
#include "ui/theme/flow_row.h"

namespace grainwise::ui {
namespace {
constexpr int kPicture = 900;  ///< width of the sheet as a picture
}

CutPage::CutPage(Look* look, RigDocument* document, OwnStore* store, CutPaper paper, QWidget* parent)
    : MakePage(look, "makeCut", parent), m_document(document), m_store(store), m_paper(std::move(paper)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 4, 8, 4);
  column->setSpacing(6);
  column->addWidget(buttonRow());
  m_habits = new LoopHabits(look, store, this);
  m_habits->hide();
  column->addWidget(m_habits);
  m_said = addLabel({});
  m_said->setObjectName(QStringLiteral("cutSaid"));
  m_said->hide();
  m_notes = addLabel({});
  m_notes->setObjectName(QStringLiteral("cutNotes"));
  m_drawing = new CutDrawing(look, this);
  makeDiagram(look, m_drawing);
  (new WayOut(look, m_drawing))
      ->add(
          tr("Cut sheet"),
          [this] { return cutsTable(pictureOf(m_sheet, m_store->spools(), units()), units()); },
          [this, look] {
            const double wide = look->px(kPicture);  // all of it, however much the page has room for
            return OutPicture{tr("Cut sheet"), QSizeF(wide, m_drawing->heightForWidth(int(wide))),
                              [this, wide](QPainter& p) { m_drawing->draw(&p, wide); }};
          });
  m_caution = addLabel(tr("Cut away from yourself; weld with the window open, hot coatings give off "
                          "fumes; glasses on when you test a loop or knot."));
  for (QWidget* part : {static_cast<QWidget*>(m_said), static_cast<QWidget*>(m_notes),
                        static_cast<QWidget*>(m_caution), static_cast<QWidget*>(m_drawing)}) {
    column->addWidget(part);
  }
  column->addStretch(1);
  askAddPath = [this] {
    return QFileDialog::getOpenFileName(this, tr("Add a rig or shelf"), {},
                                        tr("Rigs and shelves (*.rig.json *.shelf.json)"));
  };
  askPdfPath = [this] {
    return QFileDialog::getSaveFileName(this, tr("Cut sheet as PDF"), tr("cut-sheet.pdf"),
                                        tr("PDF (*.pdf)"));
  };
  connect(m_loops, &QPushButton::toggled, m_habits, &QWidget::setVisible);
  connect(m_habits, &LoopHabits::putOnLine, this, &CutPage::proposeLoops);
  connect(document, &RigDocument::rigChanged, this, [this] {
    if (isVisible()) refresh();
  });
  connect(store, &OwnStore::spoolsChanged, this, &CutPage::refresh);
  connect(store, &OwnStore::rulesChanged, this, &CutPage::refresh);
  restyle();
}

QWidget* CutPage::buttonRow() {
  auto* holder = new QWidget(this);
  auto* row = new FlowRow(look()->px(8));
  holder->setLayout(row);
  auto* add = addButton(tr("Add a rig or shelf…"), "cutAdd");
  m_forget = addButton(tr("Only this rig"), "cutForget");
  m_loops = addButton(tr("Loops and knots"), "cutHabits");
  m_loops->setCheckable(true);
  m_print = addButton(tr("Print…"), "cutPrint");
  m_pdf = addButton(tr("Sheet and labels as PDF…"), "cutPdf");
  m_cutThese = addButton(tr("Take the cuts off the spools"), "cutDone");
  for (QPushButton* button : {add, m_forget, m_loops, m_print, m_pdf, m_cutThese}) row->addWidget(button);
  connect(add, &QPushButton::clicked, this, [this] {
    const QString path = askAddPath();
    if (!path.isEmpty()) say(addFile(path));
  });
  connect(m_forget, &QPushButton::clicked, this, [this] {
    m_added.clear();
    m_instead.clear();
    say({});
    refresh();
  });
  connect(m_print, &QPushButton::clicked, this, &CutPage::print);
  connect(m_pdf, &QPushButton::clicked, this, &CutPage::savePdf);
  connect(m_cutThese, &QPushButton::clicked, this, &CutPage::takeOff);
  return holder;
}

void CutPage::say(const QString& words) {
  m_said->setText(words);
  m_said->setVisible(!words.isEmpty());
}

void CutPage::cutOnly(const std::vector<Part>& parts, const QString& of) {
  m_added.clear();
  for (const Part& part : parts) m_added.push_back({part, of.toStdString(), std::nullopt});
  m_instead = of;
  say(tr("%1, without the open rig.").arg(of));
  refresh();
}

QString CutPage::of() const {
  return m_instead.isEmpty() ? QString::fromStdString(m_document->rig().name) : m_instead;
}

void CutPage::showEvent(QShowEvent* event) {
  MakePage::showEvent(event);
  refresh();
}

QString CutPage::addFile(const QString& path) {
  const std::string name = path.toStdString();
  std::vector<MadePart> parts;
  if (path.endsWith(QStringLiteral(".shelf.json"))) {
    const auto shelf = loadShelf(name);
    if (!shelf) return problemText(shelf.error().front());
    for (const Part& part : shelf->parts) parts.push_back({part, name, std::nullopt});
  } else {
    const auto rig = loadRig(name);
    if (!rig) return problemText(rig.error().front());
    parts = partsToMake(*rig);
  }
  m_added.insert(m_added.end(), parts.begin(), parts.end());
  refresh();
  return tr("Added: %1").arg(QFileInfo(path).fileName());
}

void CutPage::refresh() {
  std::vector<MadePart> parts;
  if (m_instead.isEmpty()) parts = partsToMake(*m_document->shown());
  parts.insert(parts.end(), m_added.begin(), m_added.end());
  m_sheet = cutSheet(parts, m_store->spools(), m_store->rules());
  const CutPicture picture = pictureOf(m_sheet, m_store->spools(), units());
  m_drawing->setPicture(picture);
  m_drawing->setVisible(!m_store->spools().spools.empty());
  QStringList notes = picture.notes;
  if (m_store->spools().spools.empty()) {
    notes = {tr("No spools yet: read a list of spools, or write them down, on the Spools page.")};
  } else if (m_sheet.cuts.empty()) {
    notes.prepend(tr("Nothing to cut: no tip, leader or tippet of level line is here."));
  }
  m_notes->setText(notes.join(QLatin1Char('\n')));
  m_notes->setVisible(!notes.isEmpty());
  m_forget->setEnabled(!m_added.empty() || !m_instead.isEmpty());
  m_print->setEnabled(!m_sheet.cuts.empty());
  m_pdf->setEnabled(!m_sheet.cuts.empty());
  m_cutThese->setEnabled(!m_sheet.spools.empty());
  m_caution->setVisible(!m_sheet.cuts.empty());
}

void CutPage::print() { m_paper.preview(m_drawing->picture(), of(), units()); }

void CutPage::savePdf() {
  const QString path = askPdfPath();
  if (path.isEmpty()) return;
  const QString why = m_paper.write(m_drawing->picture(), of(), units(), path);
  say(why.isEmpty() ? tr("Written: %1").arg(QFileInfo(path).fileName()) : tr("Not written: %1").arg(why));
}

void CutPage::takeOff() {
  Spools spools = m_store->spools();
  for (const SpoolCuts& cuts : m_sheet.spools) {
    Spool& spool = spools.spools[cuts.spool];
    spool.left = cuts.left;
    keepDigits(spool.kept, "feet_left", spool.left.value(), {});
  }
  m_store->setSpools(spools);
  say(tr("Taken off the spools; Undo on the Spools page puts it back."));
}

void CutPage::proposeLoops() {
  m_document->apply(tr("Put loops on the tips"), withProposedLoops(m_document->rig(), m_store->rules()));
}

void CutPage::restyle() {
  MakePage::restyle();
  QPalette p = m_notes->palette();
  p.setColor(QPalette::WindowText, look()->colours().ochreWord);
  m_notes->setPalette(p);
  if (isVisible()) refresh();
}

}  // namespace grainwise::ui
