// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/reading_room.h"

#include <QAbstractItemView>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPlainTextEdit>
#include <QProcess>
#include <QRegularExpression>
#include <QScrollArea>
#include <QScrollBar>
#include <QSet>
#include <QTemporaryDir>
#include <QTextBrowser>
#include <QTranslator>
#include <algorithm>
#include <catch2/catch.hpp>

#include "tests/support/text_catcher.h"

namespace grainwise::test {
namespace {

/// Of a text's box: fonts round, and a descent without letters below the line is nothing lost.
constexpr double kBesides_px = 1.5;
constexpr double kAbove_px = 3.5;
constexpr double kAboveShare = 0.06;

const QSet<QString>& data() {
  static const QSet<QString> kWords{
      // units
      QStringLiteral("ft"), QStringLiteral("in"), QStringLiteral("gr"), QStringLiteral("kg"),
      QStringLiteral("mm"), QStringLiteral("cm"), QStringLiteral("lb"), QStringLiteral("oz"),
      // keys, as Qt writes them
      QStringLiteral("Alt"), QStringLiteral("Ctrl"), QStringLiteral("Shift"), QStringLiteral("Esc"),
      QStringLiteral("Del"), QStringLiteral("Return"),
      // names
      QStringLiteral("Grainwise"), QStringLiteral("Qq"), QStringLiteral("AFFTA"),
      QStringLiteral("Qt"), QStringLiteral("Charts"), QStringLiteral("nlohmann"),
      QStringLiteral("json"), QStringLiteral("tl"), QStringLiteral("expected"),
      // languages, in themselves
      QStringLiteral("English"), QStringLiteral("Deutsch"), QStringLiteral("Norsk"),
      QStringLiteral("bokmål"), QStringLiteral("Español"),
      // endings of files
      QStringLiteral("rig"), QStringLiteral("deck"), QStringLiteral("pdf"), QStringLiteral("png"),
      QStringLiteral("svg")};
  return kWords;
}

QString nameOf(const QWidget* widget) {
  QStringList path;
  for (const QWidget* w = widget; w != nullptr && path.size() < 3; w = w->parentWidget()) {
    const QString own =
        w->objectName().isEmpty()
            ? QString::fromLatin1(w->metaObject()->className()).section(QLatin1Char(':'), -1)
            : w->objectName();
    path.prepend(own);
  }
  return path.join(QLatin1Char('/'));
}

/// A page of text of its own (help) or a field for the person's words.
bool holdsDocument(const QWidget* widget) {
  if (widget->objectName() == QLatin1String("helpPages")) return true;
  const QWidget* area = widget->parentWidget();
  if (area != nullptr && area->objectName() == QLatin1String("helpPages")) return true;
  return qobject_cast<const QTextBrowser*>(widget) != nullptr ||
         qobject_cast<const QTextBrowser*>(area) != nullptr;
}

/// Whether a person can bring to sight what is cut at the side: by the bar of the view, or of the
/// table that a header belongs to.
bool rollsSideways(const QWidget* widget) {
  for (const QWidget* w = widget->parentWidget(); w != nullptr && !w->isWindow();
       w = w->parentWidget()) {
    const auto* area = qobject_cast<const QAbstractScrollArea*>(w);
    if (area != nullptr && area->horizontalScrollBar()->isVisible()) return true;
  }
  return false;
}

bool scrolls(const QWidget* widget) {
  const auto* area = qobject_cast<const QAbstractScrollArea*>(widget->parentWidget());
  return area != nullptr && area->viewport() == widget;
}

class Reader {
 public:
  explicit Reader(bool words) : m_words(words) {}

  void read(const QWidget* widget) {
    if (holdsDocument(widget)) return;
    const QString who = nameOf(widget);
    readPainted(widget, who);
    readSaid(widget, who);
    readPlace(widget, who);
  }
  [[nodiscard]] const QStringList& found() const { return m_found; }

 private:
  void object(const QString& who, const QString& what) {
    const QString line = who + QStringLiteral(": ") + what;
    if (!m_found.contains(line)) m_found.append(line);
  }

  void readWords(const QString& who, const QString& where, const QString& text) {
    if (!m_words) return;
    const QStringList plain = plainWords(text);
    if (!plain.isEmpty()) {
      object(who, QStringLiteral("%1 untranslated: %2 in \"%3\"")
                      .arg(where, plain.join(QLatin1Char(' ')), text));
    }
  }

  void readPainted(const QWidget* widget, const QString& who) {
    TextCatcher catcher(widget->size());
    const_cast<QWidget*>(widget)->render(&catcher, QPoint(), QRegion(), QWidget::RenderFlags());
    const bool typed = qobject_cast<const QLineEdit*>(widget) != nullptr;
    const bool rolls = scrolls(widget);
    for (const PaintedText& one : catcher.texts()) {
      if (one.text.trimmed().isEmpty()) continue;
      if (!typed) readWords(who, QStringLiteral("painted"), one.text);
      if (typed || (rolls && !one.room.intersects(one.place))) continue;
      const bool beside =
          !rollsSideways(widget) && (one.place.left() < one.room.left() - kBesides_px ||
                                     one.place.right() > one.room.right() + kBesides_px);
      const double lost = std::max(kAbove_px, kAboveShare * one.place.height());
      // A few lines of words in a low place: the tool tip has them whole.
      const bool inTip =
          qobject_cast<const QLabel*>(widget) != nullptr && !widget->toolTip().isEmpty();
      const bool above = !rolls && !inTip &&
                         (one.place.top() < one.room.top() - lost ||
                          one.place.bottom() > one.room.bottom() + lost);
      if (beside || above) {
        object(who, QStringLiteral("cut off: \"%1\" %2x%3 at %4,%5 in %6x%7")
                        .arg(one.text)
                        .arg(int(one.place.width()))
                        .arg(int(one.place.height()))
                        .arg(int(one.place.left()))
                        .arg(int(one.place.top()))
                        .arg(int(one.room.width()))
                        .arg(int(one.room.height())));
      }
    }
  }

  void readSaid(const QWidget* widget, const QString& who) {
    readWords(who, QStringLiteral("tool tip"), widget->toolTip());
    readWords(who, QStringLiteral("what's this"), widget->whatsThis());
    readWords(who, QStringLiteral("accessible name"), widget->accessibleName());
    readWords(who, QStringLiteral("accessible description"), widget->accessibleDescription());
    if (widget->isWindow()) readWords(who, QStringLiteral("title"), widget->windowTitle());
    if (const auto* box = qobject_cast<const QComboBox*>(widget)) {
      for (int i = 0; i < box->count(); ++i)
        readWords(who, QStringLiteral("choice"), box->itemText(i));
    }
    if (const auto* line = qobject_cast<const QLineEdit*>(widget)) {
      readWords(who, QStringLiteral("placeholder"), line->placeholderText());
    }
    if (const auto* page = qobject_cast<const QPlainTextEdit*>(widget)) {
      readWords(who, QStringLiteral("placeholder"), page->placeholderText());
    }
  }

  void readPlace(const QWidget* widget, const QString& who) {
    if (const auto* area = qobject_cast<const QScrollArea*>(widget)) {
      const bool wide =
          area->widget() != nullptr && area->widget()->width() > area->viewport()->width() + 1;
      if (wide && area->horizontalScrollBarPolicy() == Qt::ScrollBarAlwaysOff) {
        object(who, QStringLiteral("is %1 wide and holds %2")
                        .arg(area->viewport()->width())
                        .arg(area->widget()->width()));
      }
    }
    const QWidget* parent = widget->parentWidget();
    if (widget->isWindow() || parent == nullptr || scrolls(parent)) return;
    const QRect place = widget->geometry();
    if (place.left() < -1 || place.right() > parent->width()) {
      object(who, QStringLiteral("sticks out: %1 to %2 of %3")
                      .arg(place.left())
                      .arg(place.right())
                      .arg(parent->width()));
    }
  }

  bool m_words;
  QStringList m_found;
};

}  // namespace

class PseudoLanguage::Private {
 public:
  QTemporaryDir folder;
  QTranslator words;
};

PseudoLanguage::PseudoLanguage() : m_d(new Private) {
  QProcess script;
  script.start(QStringLiteral("python3"),
               {QLatin1String(GRAINWISE_SOURCE_DIR "/resources/i18n/texts.py"),
                QStringLiteral("pseudo"), m_d->folder.path()});
  REQUIRE(script.waitForFinished());
  INFO(script.readAllStandardError().toStdString());
  REQUIRE(script.exitCode() == 0);
  REQUIRE(m_d->words.load(QStringLiteral("grainwise_pseudo"), m_d->folder.path()));
  REQUIRE(QCoreApplication::installTranslator(&m_d->words));
}

PseudoLanguage::~PseudoLanguage() {
  QCoreApplication::removeTranslator(&m_d->words);
  delete m_d;
}

QStringList plainWords(const QString& text) {
  static const QRegularExpression word(QStringLiteral("[A-Za-z]{2,}"));
  QStringList found;
  for (auto all = word.globalMatch(text); all.hasNext();) {
    const QRegularExpressionMatch one = all.next();
    const auto isOther = [&](qsizetype at) {
      return at >= 0 && at < text.size() && text[at].isLetter();
    };
    // Part of a word that was translated: its other letters are no plain ones.
    if (isOther(one.capturedStart() - 1) || isOther(one.capturedEnd())) continue;
    if (!data().contains(one.captured())) found << one.captured();
  }
  return found;
}

QStringList objections(const QWidget* window, bool words) {
  QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
  Reader reader(words);
  if (window->isVisible()) reader.read(window);
  for (const QWidget* widget : window->findChildren<QWidget*>()) {
    if (widget->isVisible() && widget->window() == window) reader.read(widget);
  }
  return reader.found();
}

}  // namespace grainwise::test
