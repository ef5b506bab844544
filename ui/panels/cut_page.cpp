// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/cut_page.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/io/rig_file.h"
#include "core/io/shelf_file.h"
#include "ui/document/own_store.h"
#include "ui/document/rig_document.h"
#include "ui/panels/cut_drawing.h"
#include "ui/panels/cut_paper.h"
#include "ui/text/bench_words.h"

namespace grainwise::ui {

CutPage::CutPage(Look* look, RigDocument* document, OwnStore* store, QWidget* parent)
    : MakePage(look, "makeCut", parent), m_document(document), m_store(store) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 4, 8, 4);
  row->setSpacing(16);
  auto* left = new QVBoxLayout;
  left->setSpacing(6);
  auto* add = addButton(tr("Add a rig or shelf…"), "cutAdd");
  m_forget = addButton(tr("Only this rig"), "cutForget");
  m_pdf = addButton(tr("Sheet and labels as PDF…"), "cutPdf");
  m_cutThese = addButton(tr("I have cut these"), "cutDone");
  m_cutThese->setToolTip(tr("Takes what was cut off the spools; Undo on the Spools page puts it back"));
  auto* loops = addButton(tr("Put the loops on the line"), "cutLoops");
  loops->setToolTip(tr("Loops of 2.5 in of each tip's line weigh in; what is stated stays"));
  m_said = addLabel({});
  m_said->setObjectName(QStringLiteral("cutSaid"));
  for (QPushButton* button : {add, m_forget, m_pdf, m_cutThese, loops}) left->addWidget(button);
  left->addWidget(m_said);
  left->addStretch(1);
  auto* right = new QVBoxLayout;
  m_notes = addLabel({});
  m_notes->setObjectName(QStringLiteral("cutNotes"));
  m_drawing = new CutDrawing(look, this);
  m_caution = addLabel(tr("Cut away from yourself; weld with the window open, hot coatings give off "
                          "fumes; glasses on when you test a loop or knot."));
  right->addWidget(m_notes);
  right->addWidget(m_drawing);
  right->addWidget(m_caution);
  right->addStretch(1);
  row->addLayout(left);
  row->addLayout(right, 1);
  askAddPath = [this] {
    return QFileDialog::getOpenFileName(this, tr("Add a rig or shelf"), {},
                                        tr("Rigs and shelves (*.rig.json *.shelf.json)"));
  };
  askPdfPath = [this] {
    return QFileDialog::getSaveFileName(this, tr("Cut sheet as PDF"), tr("cut-sheet.pdf"),
                                        tr("PDF (*.pdf)"));
  };
  connect(add, &QPushButton::clicked, this, [this] {
    const QString path = askAddPath();
    if (!path.isEmpty()) m_said->setText(addFile(path));
  });
  connect(m_forget, &QPushButton::clicked, this, [this] {
    m_added.clear();
    refresh();
  });
  connect(m_pdf, &QPushButton::clicked, this, &CutPage::savePdf);
  connect(m_cutThese, &QPushButton::clicked, this, &CutPage::takeOff);
  connect(loops, &QPushButton::clicked, this, &CutPage::proposeLoops);
  connect(document, &RigDocument::rigChanged, this, [this] {
    if (isVisible()) refresh();
  });
  connect(store, &OwnStore::spoolsChanged, this, &CutPage::refresh);
  restyle();
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
  std::vector<MadePart> parts = partsToMake(*m_document->shown());
  parts.insert(parts.end(), m_added.begin(), m_added.end());
  m_sheet = cutSheet(parts, m_store->spools());
  const CutPicture picture = pictureOf(m_sheet, m_store->spools(), units());
  m_drawing->setPicture(picture);
  QStringList notes = picture.notes;
  if (m_store->spools().spools.empty()) {
    notes = {tr("No spools yet: read a list of spools, or write them down, on the Spools page.")};
  } else if (m_sheet.cuts.empty()) {
    notes.prepend(tr("Nothing to cut: this line has no tip, leader or tippet of level line."));
  }
  m_notes->setText(notes.join(QLatin1Char('\n')));
  m_notes->setVisible(!notes.isEmpty());
  m_forget->setEnabled(!m_added.empty());
  m_pdf->setEnabled(!m_sheet.cuts.empty());
  m_cutThese->setEnabled(!m_sheet.spools.empty());
  m_caution->setVisible(!m_sheet.cuts.empty());
}

void CutPage::savePdf() {
  const QString path = askPdfPath();
  if (path.isEmpty()) return;
  const QString title = QString::fromStdString(m_document->rig().name);
  const QString why = writeCutSheetPdf(path, m_drawing->picture(), title);
  m_said->setText(why.isEmpty() ? tr("Written: %1").arg(QFileInfo(path).fileName())
                                : tr("Not written: %1").arg(why));
}

void CutPage::takeOff() {
  Spools spools = m_store->spools();
  for (const SpoolCuts& cuts : m_sheet.spools) {
    Spool& spool = spools.spools[cuts.spool];
    spool.left = cuts.left;
    keepDigits(spool.kept, "feet_left", spool.left.value(), {});
  }
  m_store->setSpools(spools);
  m_said->setText(tr("Taken off the spools."));
}

void CutPage::proposeLoops() {
  m_document->apply(tr("Put loops on the tips"), withProposedLoops(m_document->rig()));
}

void CutPage::restyle() {
  MakePage::restyle();
  QPalette p = m_notes->palette();
  p.setColor(QPalette::WindowText, look()->colours().ochreWord);
  m_notes->setPalette(p);
  if (isVisible()) refresh();
}

}  // namespace grainwise::ui
