// SPDX-License-Identifier: GPL-3.0-or-later
#include <QDir>
#include <QImage>
#include <QPainter>
#include <QPrintPreviewDialog>
#include <QPrintPreviewWidget>
#include <QProcess>
#include <QRegularExpression>
#include <QSvgRenderer>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include "core/io/deck_file.h"
#include "core/choose/wallet.h"
#include "tests/support/shipped_files.h"
#include "tests/support/ui_bench.h"
#include "ui/print/deck_pages.h"
#include "ui/print/handout.h"
#include "ui/print/paper_files.h"
#include "ui/print/print_preview.h"

namespace grainwise::ui {
namespace {

const std::string kSamples = GRAINWISE_SOURCE_DIR "/sample-rigs";

/// What a program of poppler says of a file.
QString poppler(const char* program, const QStringList& words) {
  QProcess process;
  process.start(QLatin1String(program), words);
  REQUIRE(process.waitForFinished(20000));
  REQUIRE(process.exitCode() == 0);
  return QString::fromUtf8(process.readAllStandardOutput());
}

struct PaperFixture : test::UiFixture {
  PaperFixture() { REQUIRE(folder.isValid()); }
  QString path(const char* name) const { return folder.filePath(QLatin1String(name)); }
  QString pdfOf(const Pages& pages, Paper paper = Paper::a4) {
    const Written written = writePages(pages, path("out.pdf"), paper);
    REQUIRE(written.problem.isEmpty());
    REQUIRE(written.files == QStringList{path("out.pdf")});
    return path("out.pdf");
  }
  QTemporaryDir folder;
};

Handout winterHandout() {
  return Handout(test::sampleRig("01-plain-winter"), test::corrow().pools,
                 test::kTrade, {}, test::genericShelf());
}

Deck deckOf(const char* name) { return loadDeck(kSamples + "/" + name + ".deck.json").value(); }

int pagesIn(const QString& pdf) {
  const QString info = poppler("pdfinfo", {pdf});
  const auto found = QRegularExpression(QStringLiteral("Pages:\\s+(\\d+)")).match(info);
  return found.captured(1).toInt();
}

}  // namespace

TEST_CASE_METHOD(PaperFixture, "A handout says in real text what each part weighs and what the rig does") {
  const QString text = poppler("pdftotext", {QStringLiteral("-layout"), pdfOf(winterHandout()), QStringLiteral("-")});
  for (const char* words : {"Plain winter", "525 gr", "110 gr", "11 gr/ft", "525 in 525–600 gr",
                            "17.8 to 11", "smooth drop", "21 %", "3.3 ×", "Mill Run", "Chapel Hole",
                            "estimate", "Wallet", "no guide to wading", "What I changed", "power lines", "lightning"}) {
    INFO(words);
    CHECK(text.contains(QString::fromUtf8(words)));
  }
}

TEST_CASE_METHOD(PaperFixture, "A handout says which of its currents and sink rates were measured") {
  Rig rig = test::sampleRig("01-plain-winter");
  auto pools = test::corrow().pools;
  const auto textOf = [&] {
    const Handout handout(rig, pools, test::kTrade, {}, test::genericShelf());
    return poppler("pdftotext", {QStringLiteral("-layout"), pdfOf(handout), QStringLiteral("-")});
  };
  const QString before = textOf();
  CHECK_FALSE(before.contains(QLatin1String("Measured")));
  CHECK_FALSE(before.contains(QLatin1String("Timed")));
  Pool& pool = pools.front();
  pool.measured = CurrentFit{pool.surfaceSpeed, FeetPerSecond(0.4), FeetPerSecond(4), {}, "2026-10-02", {}};
  Section& tip = rig.parts[2].sections[0];
  tip.timed = Timed{tip.sinkRate->rodEnd, {}, {}, {}, {}};
  const QString text = textOf().simplified();
  CHECK(text.contains(QString::fromStdString(pool.name) + QLatin1String(": Measured: ")));
  CHECK(text.contains(QLatin1String("give or take 0.4 ft/s; stated 4 ft/s; 2026-10-02")));
  CHECK(text.contains(QLatin1String("Timed: 7.5 in/s")));
}

TEST_CASE_METHOD(PaperFixture, "A handout is written in type of 12 points, but for its small print") {
  const QString xml = poppler("pdftotext", {QStringLiteral("-bbox-layout"), pdfOf(winterHandout()), QStringLiteral("-")});
  // A line of ours of 12 pt is as high as its font: 1.36 of it, all in one family.
  constexpr double kFontHeight = 1.3;
  const auto heightOf = [&](const char* word) {
    const auto found = QRegularExpression(QStringLiteral("yMin=\"([0-9.]+)\" xMax=\"[0-9.]+\" yMax=\"([0-9.]+)\">%1<").arg(QLatin1String(word))).match(xml);
    INFO(word);
    REQUIRE(found.hasMatch());
    return found.captured(2).toDouble() - found.captured(1).toDouble();
  };
  const double body = heightOf("Teacher");
  CHECK(body >= 12 * kFontHeight);
  // Of a part's label, of an axis, of the wallet, of safety.
  for (const char* word : {"tippet", "Packed", "lightning.", "Circle:"}) CHECK(heightOf(word) == Approx(body).margin(0.1));
}

TEST_CASE_METHOD(PaperFixture, "A handout's wallet is packed for the day's pools, with one length of tip") {
  const auto pools = test::corrow().pools;
  WalletQuestion question;
  question.rigs = {test::sampleRig("01-plain-winter")};
  question.pools.pools = pools;
  question.shelf = test::genericShelf();
  question.oneLength = true;
  const Wallet wallet = pack(question, walletGrid(question));
  REQUIRE(wallet.tips.size() >= 2);
  const QString text = poppler("pdftotext", {QStringLiteral("-layout"), pdfOf(winterHandout()), QStringLiteral("-")});
  const QString table = text.mid(text.indexOf(QLatin1String("Wallet")), text.indexOf(QLatin1String("Safety")) - text.indexOf(QLatin1String("Wallet")));
  for (const WalletUse& use : wallet.uses) {
    INFO(pools[use.pool].name);
    CHECK(table.contains(QString::fromStdString(pools[use.pool].name)) == (use.served && use.slot.has_value()));
  }
  const QString none = poppler("pdftotext", {QStringLiteral("-layout"), pdfOf(Handout(test::sampleRig("01-plain-winter"), pools, test::kTrade)), QStringLiteral("-")});
  CHECK(none.contains(QLatin1String("10 ft, 11 gr/ft")));
}

TEST_CASE_METHOD(PaperFixture, "The fly of a handout ends within the line's margin on the right") {
  constexpr double kMargin_pt = 42, kLine_pt = 1.5;
  for (const char* name : test::kSound) {
    INFO(name);
    const Handout handout(test::sampleRig(name), {}, test::kTrade);
    const QSize size = (sizeOf(Paper::a4) / kPoint).toSize();
    QImage image(size, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter p(&image);
    p.scale(1 / kPoint, 1 / kPoint);
    handout.paint(p, 0, sizeOf(Paper::a4));
    p.end();
    int right = 0;
    for (int y = 0; y < size.height() / 2; ++y) {
      for (int x = 0; x < size.width(); ++x) {
        if (image.pixel(x, y) != 0xFFFFFFFF) right = std::max(right, x);
      }
    }
    CHECK(right <= size.width() - kMargin_pt + kLine_pt);
  }
}

TEST_CASE_METHOD(PaperFixture, "Every font of a page is within the file, and nothing on it is a bitmap") {
  const auto sound = [&](const Pages& pages) {
    const QString pdf = pdfOf(pages);
    const QStringList fonts = poppler("pdffonts", {pdf}).split(QLatin1Char('\n'), Qt::SkipEmptyParts).mid(2);
    REQUIRE_FALSE(fonts.isEmpty());
    for (const QString& line : fonts) {
      INFO(line.toStdString());
      // name, type (two words), encoding, emb, sub, uni
      CHECK(QRegularExpression(QStringLiteral("\\byes\\s+(yes|no)\\s+yes\\b")).match(line).hasMatch());
    }
    CHECK(poppler("pdfimages", {QStringLiteral("-list"), pdf}).split(QLatin1Char('\n'), Qt::SkipEmptyParts).size() == 2);
  };
  sound(winterHandout());
  for (const char* name : {"why-that-tip", "how-deep-was-i"}) {
    INFO(name);
    for (const auto form : {DeckPages::Form::cardAPage, DeckPages::Form::fourAPage}) {
      sound(DeckPages(deckOf(name), kSamples, form, test::kTrade));
    }
  }
}

TEST_CASE_METHOD(PaperFixture, "Sheets are A4 or Letter as asked, two of a handout") {
  CHECK(poppler("pdfinfo", {pdfOf(winterHandout(), Paper::a4)}).contains(QLatin1String("595 x 842 pts (A4)")));
  const QString letter = pdfOf(winterHandout(), Paper::letter);
  CHECK(poppler("pdfinfo", {letter}).contains(QLatin1String("612 x 792 pts (letter)")));
  CHECK(pagesIn(letter) == 2);
}

TEST_CASE_METHOD(PaperFixture, "A handout of every sample rig keeps inside its margins, on either paper") {
  constexpr double kMargin_pt = 20;  // what any printer can reach
  const auto margins = [&](const Rig& rig, Paper paper) {
    const Handout handout(rig, test::corrow().pools, test::kMetric, {}, test::genericShelf());
    for (int page = 0; page < handout.count(); ++page) {
      const QSize size = (sizeOf(paper) / kPoint).toSize();
      QImage image(size, QImage::Format_RGB32);
      image.fill(Qt::white);
      QPainter p(&image);
      p.scale(1 / kPoint, 1 / kPoint);
      handout.paint(p, page, sizeOf(paper));
      p.end();
      bool clean = true;
      for (int y = 0; y < size.height(); ++y) {
        for (int x = 0; x < size.width(); ++x) {
          const bool inside = x >= kMargin_pt && y >= kMargin_pt && x < size.width() - kMargin_pt &&
                              y < size.height() - kMargin_pt;
          if (!inside && image.pixel(x, y) != 0xFFFFFFFF) clean = false;
        }
      }
      CHECK(clean);
    }
  };
  for (const char* name : test::kSound) {
    INFO(name);
    margins(test::sampleRig(name), Paper::a4);
    margins(test::sampleRig(name), Paper::letter);
  }
  margins(Rig{}, Paper::a4);
}

TEST_CASE_METHOD(PaperFixture, "Paper is ink, white and greys: it has no colour to lose") {
  for (const bool wrong : {false, true}) {
    const Handout handout(test::sampleRig(wrong ? "wrong-hinge" : "01-plain-winter"), {}, test::kTrade);
    REQUIRE(writePages(handout, path("out.png"), Paper::a4).problem.isEmpty());
    const QImage image(path("out.png"));
    bool grey = true;
    for (int y = 0; y < image.height(); ++y) {
      for (int x = 0; x < image.width(); ++x) grey = grey && qIsGray(image.pixel(x, y));
    }
    CHECK(grey);
  }
}

TEST_CASE_METHOD(PaperFixture, "A picture has 300 dots an inch, and each side its own file") {
  const Written written = writePages(winterHandout(), path("out.png"), Paper::letter);
  CHECK(written.files == QStringList{path("out.png"), path("out-2.png")});
  const QImage image(path("out.png"));
  CHECK(image.size() == QSize(2550, 3300));
  CHECK(image.dotsPerMeterX() == 11811);
}

TEST_CASE_METHOD(PaperFixture, "An SVG of a page shows the same as the picture of it") {
  REQUIRE(writePages(winterHandout(), path("out.svg"), Paper::a4).problem.isEmpty());
  QSvgRenderer renderer(path("out.svg"));
  REQUIRE(renderer.isValid());
  const QSize size(595, 842);
  QImage fromSvg(size, QImage::Format_RGB32);
  fromSvg.fill(Qt::white);
  QPainter svgPainter(&fromSvg);
  renderer.render(&svgPainter, QRectF(QPointF(0, 0), size));
  svgPainter.end();
  QImage direct(size, QImage::Format_RGB32);
  direct.fill(Qt::white);
  QPainter p(&direct);
  p.scale(595 / sizeOf(Paper::a4).width(), 842 / sizeOf(Paper::a4).height());
  winterHandout().paint(p, 0, sizeOf(Paper::a4));
  p.end();
  // Text is laid out anew by the renderer: dark pixels are compared by regions of 17 x 17, not one by one.
  constexpr int kRegion = 17;
  constexpr double kApart = 0.05;  // of a region, black being 1: seen 0.018
  double worst = 0;
  for (int y = 0; y + kRegion <= size.height(); y += kRegion) {
    for (int x = 0; x + kRegion <= size.width(); x += kRegion) {
      double a = 0, b = 0;
      for (int v = y; v < y + kRegion; ++v) {
        for (int u = x; u < x + kRegion; ++u) {
          a += 255 - qGray(fromSvg.pixel(u, v));
          b += 255 - qGray(direct.pixel(u, v));
        }
      }
      worst = std::max(worst, std::abs(a - b) / (255.0 * kRegion * kRegion));
    }
  }
  CHECK(worst < kApart);
}

TEST_CASE_METHOD(PaperFixture, "A deck prints a card a page with its answer, or four a page without") {
  const Deck deck = deckOf("why-that-tip");
  const QString answer = QStringLiteral("The leech 33 grains");
  const QString single = pdfOf(DeckPages(deck, kSamples, DeckPages::Form::cardAPage, test::kTrade));
  CHECK(pagesIn(single) == 13);
  CHECK(poppler("pdftotext", {single, QStringLiteral("-")}).contains(answer));
  const DeckPages quarters(deck, kSamples, DeckPages::Form::fourAPage, test::kTrade);
  CHECK(quarters.missing().isEmpty());
  const QString four = pdfOf(quarters);
  CHECK(pagesIn(four) == 4);
  const QString text = poppler("pdftotext", {four, QStringLiteral("-")});
  CHECK_FALSE(text.contains(answer));
  CHECK(text.contains(QStringLiteral("Which weighs most wet")));
}

TEST_CASE_METHOD(PaperFixture, "A card whose rig is gone says so on its page, and the others print") {
  Deck deck = deckOf("why-that-tip");
  deck.cards[2].rig = std::string("gone.rig.json");
  const DeckPages pages(deck, kSamples, DeckPages::Form::cardAPage, test::kTrade);
  REQUIRE(pages.missing().size() == 1);
  CHECK(pages.missing().first().contains(QStringLiteral("card 3")));
  const QString text = poppler("pdftotext", {pdfOf(pages), QStringLiteral("-")});
  CHECK(text.contains(QStringLiteral("gone.rig.json")));
  CHECK(text.contains(QStringLiteral("Downhill or hinge")));
}

TEST_CASE_METHOD(PaperFixture, "Paper that cannot be written is told, and the file that was there stays") {
  const Written nowhere = writePages(winterHandout(), path("none/out.pdf"), Paper::a4);
  CHECK(nowhere.problem.contains(QLatin1String("out.pdf")));
  CHECK(nowhere.files.isEmpty());
  CHECK_FALSE(writePages(winterHandout(), path("out.doc"), Paper::a4).problem.isEmpty());
  CHECK_FALSE(QFile::exists(path("out.doc")));
}

TEST_CASE_METHOD(PaperFixture, "The preview shows both sides of a handout without a printer") {
  int pages = 0;
  QTimer::singleShot(200, [&] {
    auto* preview = qobject_cast<QPrintPreviewDialog*>(QApplication::activeModalWidget());
    if (!preview) return;
    if (auto* view = preview->findChild<QPrintPreviewWidget*>()) pages = view->pageCount();
    preview->reject();
  });
  previewPages(std::make_shared<Handout>(test::sampleRig("01-plain-winter"), std::vector<Pool>{}, test::kTrade),
               nullptr);
  CHECK(pages == 2);
}

}  // namespace grainwise::ui
