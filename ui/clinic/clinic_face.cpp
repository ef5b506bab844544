// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/clinic/clinic_face.h"

#include <QComboBox>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QMessageBox>
#include <QPainter>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>
#include <tuple>

#include "core/io/deck_file.h"
#include "core/model/deck_edits.h"
#include "core/model/limits.h"
#include "ui/clinic/card_form.h"
#include "ui/clinic/card_out.h"
#include "ui/clinic/card_view.h"
#include "ui/clinic/deck_document.h"
#include "ui/clinic/deck_run.h"
#include "ui/clinic/edit_panel.h"
#include "ui/clinic/keep_awake.h"
#include "ui/clinic/remote_keys.h"
#include "ui/clinic/show_window.h"
#include "ui/clinic/teacher_view.h"
#include "ui/document/file_names.h"
#include "ui/document/preferences.h"
#include "ui/panels/elided_choice.h"
#include "ui/text/problem_words.h"
#include "ui/theme/ground.h"
#include "ui/theme/pill_list.h"
#include "ui/theme/tab_order.h"

namespace grainwise::ui {
namespace {

constexpr int kTarget = 44;
/// Of both sides together, beside a button's words.
constexpr int kButtonRoom = 22;
constexpr double kAspect = 16.0 / 9.0;
/// References are checked when the typing has paused.
constexpr int kPause_ms = 250;
constexpr auto kEnding = ".deck.json";
/// What there is to do with cards, once there are some.
constexpr const char* kOfCards[] = {"cardTwice", "cardDelete", "previewAnswer", "showFirst", "showHere", "deckPrint"};
constexpr auto kFilter =
    QT_TRANSLATE_NOOP("grainwise::ui::ClinicFace", "Decks (*.deck.json);;All files (*)");

ClinicFace::Unsaved askByDialog(QWidget* parent, const QString& name) {
  QMessageBox box(QMessageBox::Question, ClinicFace::tr("Unsaved changes"),
                  ClinicFace::tr("Save the changes to \"%1\" first?").arg(name),
                  QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, parent);
  box.setTextFormat(Qt::PlainText);
  const int answer = box.exec();
  return answer == QMessageBox::Save      ? ClinicFace::Unsaved::save
         : answer == QMessageBox::Discard ? ClinicFace::Unsaved::discard
                                          : ClinicFace::Unsaved::cancel;
}

}  // namespace

ClinicFace::ClinicFace(Look* look, const SharedShelf& shelf, QWidget* parent, const Preferences* preferences)
    : QWidget(parent), m_look(look), m_preferences(preferences) {
  setObjectName(QStringLiteral("clinic"));
  m_document = new DeckDocument(this);
  m_check = new QTimer(this);
  m_check->setSingleShot(true);
  m_check->setInterval(kPause_ms);
  m_stack = new QStackedWidget(this);
  m_desk = new QWidget(m_stack);
  m_teacher = new TeacherView(look, m_stack);
  m_stack->addWidget(m_desk);
  m_stack->addWidget(m_teacher);
  m_edit = new EditPanel(look, shelf, preferences, this);
  m_edit->hide();
  layOut();
  connectParts();
  giveButtonsRoom();
  askOpenPath = [this] {
    return QFileDialog::getOpenFileName(this, tr("Open a deck"), m_document->path(), tr(kFilter));
  };
  askSavePath = [this] {
    return QFileDialog::getSaveFileName(
        this, tr("Save the deck"),
        suggestedFile(m_document->path(), m_document->deck().title, QLatin1String(kEnding), {}), tr(kFilter));
  };
  askRigPath = [this] {
    return QFileDialog::getOpenFileName(this, tr("A rig in the deck's folder"),
                                        QString::fromStdString(m_document->folder().string()),
                                        tr("Rigs (*.rig.json)"));
  };
  askUnsaved = [this] { return askByDialog(this, QString::fromStdString(m_document->deck().title)); };
  fillScreens();
  refresh();
}

ClinicFace::~ClinicFace() {
  // A rig that is being changed goes with the window it stands in: the top of this one may be half gone already.
  m_teacher->setRun(nullptr);
  m_show.reset();
  m_document->disconnect();  // its undo stack speaks once more as it goes, after what would listen has gone
}

QPushButton* ClinicFace::addButton(const QString& name, const QString& words) {
  auto* button = new QPushButton(words, m_desk);
  button->setObjectName(name);
  button->setMinimumHeight(kTarget);
  return button;
}

void ClinicFace::layOut() {
  m_title = new QLineEdit(m_desk);
  m_title->setObjectName(QStringLiteral("deckTitle"));
  m_title->setAccessibleName(tr("Title of the deck"));
  m_title->setPlaceholderText(tr("Title of the deck"));
  m_title->setMinimumHeight(kTarget);
  m_title->setMaxLength(limits::kStringChars);
  m_list = new QListWidget(m_desk);
  m_list->setObjectName(QStringLiteral("deckCards"));
  m_list->setAccessibleName(tr("Cards of the deck"));
  keepChosen(m_list);
  const auto fit = [this] {
    m_list->setFont(m_look->font(16));
    if (m_words != nullptr) say(said());
  };
  connect(m_look, &Look::changed, m_list, fit);
  fit();
  m_list->setSpacing(4);
  m_preview = new CardView(m_look, m_desk);
  m_preview->setObjectName(QStringLiteral("cardPreview"));
  m_preview->setAspect(kAspect);
  m_preview->setPrompt(tr("No card yet. Make one of the rig on the bench, or begin with a blank one.\n\n"
                          "Lessons to look at: Menu, Help, Sample decks and rigs."));
  addWayOut(m_look, m_preview);
  m_answer = addButton(QStringLiteral("previewAnswer"), tr("With its answer"));
  m_answer->setCheckable(true);
  m_form = new CardForm(m_look, m_desk);
  m_form->setObjectName(QStringLiteral("cardForm"));
  m_words = new QLabel(m_desk);
  m_words->setObjectName(QStringLiteral("clinicWords"));
  m_words->setTextFormat(Qt::PlainText);
  m_words->setWordWrap(true);
  m_screens = new ElidedChoice(m_desk);
  m_screens->setObjectName(QStringLiteral("showScreen"));
  m_screens->setAccessibleName(tr("Screen for the class"));
  m_screens->setMinimumHeight(kTarget);

  auto* files = new QHBoxLayout;
  for (const auto& [name, words] : {std::pair{"deckNew", tr("New")}, std::pair{"deckOpen", tr("Open…")},
                                    std::pair{"deckSave", tr("Save")}, std::pair{"deckPrint", tr("Print")}}) {
    files->addWidget(addButton(QLatin1String(name), words));
  }
  auto* cards = new QHBoxLayout;
  for (const auto& [name, words] :
       {std::pair{"cardFromBench", tr("Card from the bench")}, std::pair{"cardBlank", tr("Blank card")}}) {
    cards->addWidget(addButton(QLatin1String(name), words));
  }
  auto* order = new QHBoxLayout;
  for (const auto& [name, words] : {std::pair{"cardUp", tr("Up")}, std::pair{"cardDown", tr("Down")},
                                    std::pair{"cardTwice", tr("Duplicate")}, std::pair{"cardDelete", tr("Delete")}}) {
    order->addWidget(addButton(QLatin1String(name), words));
  }
  auto* left = new QVBoxLayout;
  left->addLayout(files);
  left->addWidget(m_title);
  left->addWidget(m_list, 1);
  left->addLayout(cards);
  left->addLayout(order);
  auto* show = new QHBoxLayout;
  show->addWidget(m_answer);
  show->addStretch(1);
  show->addWidget(m_screens);
  auto* start = new QHBoxLayout;
  start->addWidget(addButton(QStringLiteral("showFirst"), tr("Show (F5)")));
  start->addWidget(addButton(QStringLiteral("showHere"), tr("From this card (Shift+F5)")));
  auto* middle = new QVBoxLayout;
  middle->addWidget(m_preview, 1);
  middle->addLayout(show);
  middle->addLayout(start);
  middle->addWidget(m_words);
  auto* scroll = new QScrollArea(m_desk);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setWidget(m_form);
  auto* row = new QHBoxLayout(m_desk);
  row->setContentsMargins(16, 8, 16, 8);
  row->setSpacing(12);
  row->addLayout(left, 5);
  row->addLayout(middle, 9);
  row->addWidget(scroll, 6);
  auto* whole = new QVBoxLayout(this);
  whole->setContentsMargins(0, 0, 0, 0);
  whole->addWidget(m_stack);
  tabAsLaidOut(m_desk);
}

/// Words of a button do not touch its border.
void ClinicFace::giveButtonsRoom() {
  for (QPushButton* button : m_desk->findChildren<QPushButton*>()) {
    const QFontMetrics metrics(button->font());
    const int arrow = button->menu() != nullptr ? metrics.height() : 0;
    button->setMinimumWidth(metrics.horizontalAdvance(button->text()) + arrow + kButtonRoom);
  }
}

void ClinicFace::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange && m_form != nullptr) giveButtonsRoom();
}

void ClinicFace::connectParts() {
  const auto on = [this](const char* name, auto what) {
    connect(findChild<QPushButton*>(QLatin1String(name)), &QPushButton::clicked, this, what);
  };
  const auto deck = [this]() -> const Deck& { return m_document->deck(); };
  on("deckNew", [this] { if (mayLeave()) m_document->startFrom(Deck{}); });
  on("deckOpen", [this] {
    const QString path = askOpenPath();
    if (!path.isEmpty() && mayLeave()) openDeck(path);
  });
  on("deckSave", [this] { save(); });
  auto* paper = new QMenu(this);
  for (const auto& [name, words, four] :
       {std::tuple{"printCards", tr("A card a page, with its answer and the notes…"), false},
        std::tuple{"printFour", tr("Four cards a page, with lines to write on…"), true}}) {
    QAction* action = paper->addAction(words);
    action->setObjectName(QLatin1String(name));
    connect(action, &QAction::triggered, this, [this, four = four] { if (printDeck) printDeck(four); });
  }
  findChild<QPushButton*>(QStringLiteral("deckPrint"))->setMenu(paper);
  on("cardFromBench", [this] {
    const auto rig = benchRig ? benchRig() : std::nullopt;
    if (rig) addCard(deck_edits::cardOf(*rig, CardShow::strip));
  });
  on("cardBlank", [this] { addCard(Card{}); });
  on("cardTwice", [this, deck] {
    const int at = current();
    if (at >= 0) apply(tr("Duplicate card"), deck_edits::duplicated(deck(), std::size_t(at)), at + 1);
  });
  on("cardDelete", [this, deck] {
    const int at = current();
    if (at >= 0) apply(tr("Delete card"), deck_edits::removed(deck(), std::size_t(at)), at);
  });
  const auto move = [this, deck](int by) {
    const int at = current();
    const int to = at + by;
    apply(tr("Move card"), deck_edits::moved(deck(), std::size_t(at), std::size_t(to)), to);
  };
  on("cardUp", [move] { move(-1); });
  on("cardDown", [move] { move(1); });
  m_list->installEventFilter(this);
  on("showFirst", [this] { startShow(0); });
  on("showHere", [this] { startShow(std::max(0, current())); });
  connect(m_answer, &QPushButton::toggled, this, &ClinicFace::refreshCard);
  connect(m_list, &QListWidget::currentRowChanged, this, [this] { if (!m_filling) refreshCard(); });
  connect(m_title, &QLineEdit::textEdited, this, [this, deck](const QString& words) {
    m_document->apply(tr("Title of the deck"), deck_edits::retitled(deck(), words.toStdString()),
                      QStringLiteral("title"));
  });
  m_form->benchRig = [this] { return benchRig ? benchRig() : std::nullopt; };
  m_form->benchPools = [this] { return benchPools ? benchPools() : std::vector<Pool>(); };
  m_form->askRigFile = [this] { return rigFileName(); };
  connect(m_form, &CardForm::edited, this, [this, deck](const QString& step, const Card& card, const QString& gesture) {
    const int at = current();
    if (at < 0) return;
    const QString one = gesture.isEmpty() ? QString() : gesture + QString::number(at);
    apply(step, deck_edits::replaced(deck(), std::size_t(at), card), at, one);
  });
  connect(m_document, &DeckDocument::deckChanged, this, &ClinicFace::refresh);
  if (m_preferences != nullptr) {
    connect(m_preferences, &Preferences::rulesChanged, this, [this] {
      refreshCard();
      if (m_run) m_run->setRules(m_preferences->rules());
    });
  }
  connect(m_document, &DeckDocument::fileChanged, this, &ClinicFace::refreshCard);
  connect(m_check, &QTimer::timeout, this, &ClinicFace::checkCards);
  connect(m_teacher, &TeacherView::editRequested, this, &ClinicFace::toggleEdit);
  connect(m_teacher, &TeacherView::endRequested, this, &ClinicFace::endShow);
  connect(m_edit, &EditPanel::putBack, this, [this] { if (m_run && m_run->editing()) toggleEdit(); });
  connect(m_edit, &EditPanel::rigChanged, this, [this](const Rig& rig, int side) {
    if (m_run) m_run->setEdited(std::size_t(side), rig);
  });
  connect(qGuiApp, &QGuiApplication::screenAdded, this, &ClinicFace::fillScreens);
  connect(qGuiApp, &QGuiApplication::screenRemoved, this, [this] { QTimer::singleShot(0, this, &ClinicFace::fillScreens); });
}

void ClinicFace::apply(const QString& step, const Deck& after, int choose_, const QString& gesture) {
  m_document->apply(step, after, gesture);
  choose(choose_);
}

void ClinicFace::addCard(const Card& card) {
  const int at = current() + 1;
  apply(tr("Add card"), deck_edits::inserted(m_document->deck(), std::size_t(at), card), at);
}

int ClinicFace::current() const { return m_list->currentRow(); }

void ClinicFace::choose(int card) {
  m_list->setCurrentRow(std::clamp(card, m_list->count() > 0 ? 0 : -1, m_list->count() - 1));
}

void ClinicFace::refresh() {
  m_filling = true;
  const Deck& deck = m_document->deck();
  const QString title = QString::fromStdString(deck.title);
  if (m_title->text() != title) m_title->setText(title);
  const int at = current();
  while (m_list->count() > int(deck.cards.size())) delete m_list->takeItem(m_list->count() - 1);
  while (m_list->count() < int(deck.cards.size())) m_list->addItem(QString());
  for (int i = 0; i < m_list->count(); ++i) {
    const QString name = QString::fromStdString(deck.cards[std::size_t(i)].title);
    m_list->item(i)->setText(tr("%1. %2").arg(i + 1).arg(name.isEmpty() ? tr("no title yet") : name));
  }
  choose(std::max(at, 0));
  m_filling = false;
  refreshCard();
  m_check->start();
}

void ClinicFace::refreshCard() {
  const int at = current();
  const Deck& deck = m_document->deck();
  for (const char* name : kOfCards) findChild<QPushButton*>(QLatin1String(name))->setEnabled(!deck.cards.empty());
  findChild<QPushButton*>(QStringLiteral("cardUp"))->setEnabled(at > 0);
  findChild<QPushButton*>(QStringLiteral("cardDown"))->setEnabled(at >= 0 && at + 1 < int(deck.cards.size()));
  if (at < 0 || at >= int(deck.cards.size())) {
    m_preview->setCard(nullptr, {});
    m_form->setCard(std::nullopt);
    return;
  }
  const Card& card = deck.cards[std::size_t(at)];
  CardState state;
  state.index = at;
  state.count = int(deck.cards.size());
  state.answered = m_answer->isChecked();
  m_preview->setCard(std::make_shared<const ShownCard>(shownCard(card, m_document->folder(), conditions())), state);
  m_form->setCard(card);
}

Conditions ClinicFace::conditions() const {
  Conditions by;
  by.rules = rulesOf(m_preferences);
  return by;
}

void ClinicFace::checkCards() {
  const Deck& deck = m_document->deck();
  QStringList lines;
  for (std::size_t i = 0; i < deck.cards.size(); ++i) {
    const QStringList missing = shownCard(deck.cards[i], m_document->folder()).missing;
    QListWidgetItem* item = m_list->item(int(i));
    item->setToolTip(missing.join(QLatin1Char('\n')));
    QFont font = m_list->font();
    font.setItalic(!missing.isEmpty());
    item->setFont(font);
    for (const QString& what : missing) lines.append(tr("Card %1: %2").arg(i + 1).arg(what));
  }
  say(lines.join(QLatin1Char('\n')));
}

void ClinicFace::say(const QString& words) {
  m_words->setText(words);
  m_words->setAccessibleName(words);
  QPalette p = m_words->palette();
  p.setColor(QPalette::WindowText, m_look->colours().ochreWord);
  m_words->setPalette(p);
}

QString ClinicFace::said() const { return m_words->text(); }

QString ClinicFace::rigFileName() {
  if (m_document->path().isEmpty()) {
    say(tr("Save the deck first: rig files are named from its folder on."));
    return {};
  }
  const QString path = askRigPath();
  if (path.isEmpty()) return {};
  QString name =
      QDir(QFileInfo(m_document->path()).absolutePath()).relativeFilePath(QFileInfo(path).absoluteFilePath());
  if (staysInFolder(name.toStdString())) return name;
  say(tr("%1 lies outside the deck's folder: copy it there, or take it from the bench into the deck.")
          .arg(QFileInfo(path).fileName()));
  return {};
}

Problems ClinicFace::openDeck(const QString& path) {
  Problems problems = m_document->open(path);
  if (!problems.empty()) {
    QStringList lines{tr("%1 was not opened").arg(QFileInfo(path).fileName())};
    for (const Problem& problem : problems) lines.append(problemLine(problem));
    say(lines.mid(0, 5).join(QLatin1Char('\n')));
    return problems;
  }
  choose(0);
  m_list->setFocus();
  checkCards();
  Q_EMIT deckOpened(path);
  return {};
}

bool ClinicFace::save() {
  if (m_document->path().isEmpty()) return saveAs();
  const Problems problems = m_document->saveAs(m_document->path());
  if (!problems.empty()) say(problemLine(problems.front()));
  return problems.empty();
}

bool ClinicFace::saveAs() {
  QString path = askSavePath();
  if (path.isEmpty()) return false;
  if (!path.endsWith(QLatin1String(".json"))) path += QLatin1String(kEnding);
  const Problems problems = m_document->saveAs(path);
  if (!problems.empty()) say(problemLine(problems.front()));
  if (problems.empty()) Q_EMIT deckOpened(path);
  return problems.empty();
}

bool ClinicFace::mayLeave() {
  if (!m_document->isModified()) return true;
  switch (askUnsaved()) {
    case Unsaved::save:
      return save();
    case Unsaved::discard:
      return true;
    case Unsaved::cancel:
      break;
  }
  return false;
}

void ClinicFace::fillScreens() {
  m_screens->clear();
  const QList<QScreen*> screens = QGuiApplication::screens();
  for (const QScreen* is : screens) {
    m_screens->addItem(tr("%1, %2 × %3").arg(is->name()).arg(is->geometry().width()).arg(is->geometry().height()));
  }
  // The projector is the screen that this window is not on.
  for (int i = 0; i < screens.size(); ++i) {
    if (screens[i] != screen()) m_screens->setCurrentIndex(i);
  }
}

QScreen* ClinicFace::chosenScreen() const {
  const QList<QScreen*> screens = QGuiApplication::screens();
  const int at = m_screens->currentIndex();
  return at >= 0 && at < screens.size() ? screens[at] : nullptr;
}

void ClinicFace::startShow(int from) {
  if (m_run) return;
  if (m_document->deck().cards.empty()) return say(tr("The deck has no card yet."));
  m_run = std::make_unique<DeckRun>(m_document->deck(), m_document->folder(), conditions());
  m_run->setStill(m_look->reduceMotion());
  m_run->goTo(from);
  m_keys = std::make_unique<RemoteKeys>(m_run.get());
  connect(m_keys.get(), &RemoteKeys::editRequested, this, &ClinicFace::toggleEdit);
  // The first Escape leaves the rig that is being changed, the next one the show.
  connect(m_keys.get(), &RemoteKeys::endRequested, this, [this] {
    if (m_run && m_run->editing()) {
      toggleEdit();
    } else {
      endShow();
    }
  }, Qt::QueuedConnection);
  connect(m_run.get(), &DeckRun::changed, this, &ClinicFace::takePanelAway);
  m_show = std::make_unique<ShowWindow>(m_look, m_run.get());
  connect(m_show.get(), &ShowWindow::closed, this, &ClinicFace::endShow, Qt::QueuedConnection);
  m_teacher->setRun(m_run.get());
  m_stack->setCurrentWidget(m_teacher);
  m_awake = std::make_unique<KeepAwake>(tr("A deck is being shown"));
  m_show->openOn(chosenScreen());
}

void ClinicFace::toggleEdit() {
  if (!m_run || !m_show) return;
  const auto card = m_run->shown();
  // Of a card that lacks a rig nobody could say which is changed.
  if (!m_run->editing() && (!card || card->rigs.empty() || !card->missing.isEmpty())) return;
  const bool begin = !m_run->editing();
  // With one screen only, the panel stands under the card.
  const bool twoScreens = chosenScreen() && chosenScreen() != screen();
  if (begin) {
    std::vector<Rig> rigs;
    for (const PictureRig& rig : card->rigs) rigs.push_back(*rig.rig);
    m_edit->begin(rigs);
    m_run->setEdited(rigs);
    if (twoScreens) {
      m_teacher->setPanel(m_edit);
    } else {
      m_show->setPanel(m_edit);
    }
    return;
  }
  m_run->setEdited({});
}

/// Whoever ended the change: the key that began it, or a step to another card.
void ClinicFace::takePanelAway() {
  if (m_run->editing() || m_edit->parentWidget() == this) return;
  m_teacher->setPanel(nullptr);
  m_show->setPanel(nullptr);
  m_edit->setParent(this);
  m_edit->hide();
}

void ClinicFace::endShow() {
  if (!m_run) return;
  const int at = m_run->index();
  m_teacher->setPanel(nullptr);
  m_show->setPanel(nullptr);
  m_edit->setParent(this);
  m_edit->hide();
  m_teacher->setRun(nullptr);
  m_keys.reset();
  m_show->disconnect(this);
  m_show.reset();
  m_awake.reset();
  m_run.reset();
  m_stack->setCurrentWidget(m_desk);
  choose(at);
}

bool ClinicFace::eventFilter(QObject* watched, QEvent* event) {
  if (watched != m_list || event->type() != QEvent::KeyPress) return false;
  const auto* key = static_cast<QKeyEvent*>(event);
  const bool up = key->key() == Qt::Key_Up;
  if (key->modifiers() != Qt::AltModifier || (!up && key->key() != Qt::Key_Down)) return false;
  findChild<QPushButton*>(up ? QStringLiteral("cardUp") : QStringLiteral("cardDown"))->click();
  return true;
}

void ClinicFace::paintEvent(QPaintEvent*) {
  QPainter p(this);
  paintGround(p, this, m_look->colours().paper);
}

}  // namespace grainwise::ui
