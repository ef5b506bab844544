// SPDX-License-Identifier: GPL-3.0-or-later
#include <QBuffer>
#include <QDir>
#include <QImage>
#include <QPainter>
#include <QRegularExpression>
#include <QSvgGenerator>
#include <array>
#include <cmath>
#include <map>

#include "tests/support/contrast.h"
#include "tests/ui/clinic_support.h"
#include "ui/charts/card_figures.h"
#include "ui/clinic/card_page.h"
#include "ui/text/quantities.h"
#include "ui/theme/language.h"
#include "ui/theme/glyph.h"

namespace grainwise::ui {
namespace {

constexpr std::array<QSize, 2> kScreens{QSize(1280, 720), QSize(1920, 1080)};
constexpr double kSlack_px = 0.51;  // of a whole-pixel font size

struct Drawn {
  ShownCard card;
  CardState state;
};

/// A deck that ships, and the language that it is in: to be shown while the window speaks it.
struct Shipped {
  std::string lesson;
  QString language;
  std::string name;  ///< of the file, without its ending
};
std::vector<Shipped> shippedDecks() {
  std::vector<Shipped> all;
  for (const std::string lesson : test::kDeckNames) {
    for (const Language& one : languages()) {
      const bool english = one.code == QLatin1String("en");
      all.push_back({lesson, one.code, english ? lesson : lesson + "." + one.code.toStdString()});
    }
  }
  return all;
}

/// Every card of a deck, before and after its answer, with its swings and loops run: once for a lesson,
/// whose rigs are the same in every language (tests/golden).
std::vector<Drawn> cardsOf(const Deck& deck, const std::string& lesson = {}) {
  static std::map<std::pair<std::string, std::size_t>, decltype(ShownCard::runs)> kRun;
  std::vector<Drawn> all;
  for (std::size_t i = 0; i < deck.cards.size(); ++i) {
    ShownCard shown = shownCard(deck.cards[i], test::kDecks);
    const auto known = kRun.find({lesson, i});
    shown.runs = lesson.empty() || known == kRun.end() ? runsOf(deck.cards[i].show, shown.rigs) : known->second;
    if (!lesson.empty()) kRun[{lesson, i}] = shown.runs;
    for (const bool answered : {false, true}) {
      all.push_back({shown, CardState{int(i), int(deck.cards.size()), answered, true, -1}});
    }
  }
  return all;
}
std::vector<Drawn> cardsOf(const Shipped& one) { return cardsOf(test::sampleDeck(one.name), one.lesson); }

/// A deck with a card of each kind and one that lacks its rig.
Deck allKinds() {
  Deck deck;
  deck.title = "All kinds";
  for (const CardShow show : {CardShow::strip, CardShow::profile, CardShow::cast, CardShow::river,
                              CardShow::compare, CardShow::flies, CardShow::pools, CardShow::tips,
                              CardShow::text}) {
    Card card;
    card.title = "Kind";
    card.say = "One line.";
    card.ask = "A question?";
    card.reveal = "An answer.";
    card.show = show;
    card.rig = std::string("01-plain-winter.rig.json");
    card.rigB = std::string("wrong-hinge.rig.json");
    if (show == CardShow::tips) {
      for (const char* name : {"01-plain-winter", "03-thin-tail"}) {
        for (const Part& part : test::sampleRig(name).parts) {
          if (part.kind == PartKind::tip) card.parts.push_back(part);
        }
      }
    }
    deck.cards.push_back(card);
  }
  deck.cards.push_back(deck.cards.front());
  deck.cards.back().rig = std::string("gone.rig.json");
  return deck;
}

QImage pictureOf(const Drawn& drawn, QSize size) {
  QImage image(size, QImage::Format_RGB32);
  QPainter p(&image);
  paintCardPage(p, size, drawn.card, drawn.state, coloursOf(Scheme::projector), test::kTrade);
  return image;
}

/// What a card is drawn with: each text's font height and colour, and where its line begins.
struct Written {
  double pixels;
  QColor colour;
  QString words;
  QPointF at;
  [[nodiscard]] QRectF box(bool bold) const {
    QFont font = PictureStyle().font(1, bold);
    font.setPixelSize(int(pixels));
    // From the top of a capital to the end of a tail, as fonts have them.
    return {at.x(), at.y() - 0.75 * pixels, QFontMetricsF(font).horizontalAdvance(words), 0.97 * pixels};
  }
};
std::vector<Written> writtenOn(const Drawn& drawn, QSize size) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QSvgGenerator svg;
  svg.setOutputDevice(&buffer);
  svg.setSize(size);
  svg.setViewBox(QRect(QPoint(0, 0), size));
  QPainter p(&svg);
  paintCardPage(p, size, drawn.card, drawn.state, coloursOf(Scheme::projector), test::kTrade);
  p.end();
  std::vector<Written> all;
  // A text is filled in the colour of its own element, or of the group that it stands in.
  static const QRegularExpression kToken(
      QStringLiteral("<g fill=\"[^\"]*\"[^>]*?stroke=\"(#[0-9a-f]{6}|none)\"|<text fill=\"(#[0-9a-f]{6})\"[^>]*? x=\"([-0-9.]+)\" y=\"([-0-9.]+)\"[^>]*?font-size=\"([0-9.]+)\"[^>]*>([^<]*)<"));
  auto found = kToken.globalMatch(QString::fromUtf8(bytes));
  while (found.hasNext()) {
    const auto match = found.next();
    if (match.captured(5).isEmpty()) continue;
    all.push_back({match.captured(5).toDouble(), QColor(match.captured(2)), match.captured(6).trimmed(),
                   QPointF(match.captured(3).toDouble(), match.captured(4).toDouble())});
  }
  return all;
}

using Matrix = std::array<std::array<double, 3>, 3>;
/// Full dichromacy in linear RGB. Source: Machado, Oliveira & Fernandes (2009), IEEE TVCG 15(6):1291,
/// table for severity 1.0 (from memory).
constexpr Matrix kProtan{{{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}}};
constexpr Matrix kDeutan{{{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}}};
constexpr Matrix kTritan{{{1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}}};

std::array<double, 3> lab(const QColor& colour, const Matrix* seen) {
  std::array<double, 3> rgb{test::linearLight(colour.redF()), test::linearLight(colour.greenF()),
                            test::linearLight(colour.blueF())};
  if (seen) {
    const auto was = rgb;
    for (std::size_t i = 0; i < 3; ++i) {
      const auto& row = (*seen)[i];
      rgb[i] = std::clamp(row[0] * was[0] + row[1] * was[1] + row[2] * was[2], 0.0, 1.0);
    }
  }
  const double x = (0.4124 * rgb[0] + 0.3576 * rgb[1] + 0.1805 * rgb[2]) / 0.95047;
  const double y = 0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2];
  const double z = (0.0193 * rgb[0] + 0.1192 * rgb[1] + 0.9505 * rgb[2]) / 1.08883;
  const auto f = [](double t) { return t > 0.008856 ? std::cbrt(t) : 7.787 * t + 16.0 / 116; };
  return {116 * f(y) - 16, 500 * (f(x) - f(y)), 200 * (f(y) - f(z))};
}

double apart(const QColor& a, const QColor& b, const Matrix* seen) {
  const auto one = lab(a, seen);
  const auto two = lab(b, seen);
  return std::hypot(one[0] - two[0], one[1] - two[1], one[2] - two[2]);
}

}  // namespace

TEST_CASE("A card of any kind is drawn on however small a screen and under however long a text") {
  Deck deck = allKinds();
  for (Card& card : deck.cards) {
    for (auto* text : {&card.say, &card.ask}) *text = std::string(4000, 'w');
    for (std::size_t i = 8; i < 4000; i += 9) (*card.say)[i] = (*card.ask)[i] = ' ';
    card.reveal.reset();  // answered from the start
  }
  for (Card& card : allKinds().cards) deck.cards.push_back(card);
  int drawn = 0;
  for (const Drawn& one : cardsOf(deck)) {
    for (const QSize size : {QSize(1, 1), QSize(9, 5), QSize(16, 9), QSize(160, 90), QSize(400, 60), QSize(60, 400), QSize(1366, 768)}) {
      CHECK_FALSE(pictureOf(one, size).isNull());
      ++drawn;
    }
  }
  CHECK(drawn > 100);
}

TEST_CASE("Every card of the shipped decks draws on both screens, whole and within its margins") {
  const QString folder = QString::fromLocal8Bit(qgetenv("GRAINWISE_SHOTS"));
  for (const Shipped& one : shippedDecks()) {
    const Speaking speaking(one.language);
    for (const Drawn& drawn : cardsOf(one)) {
      INFO(one.name << " " << drawn.state.index << (drawn.state.answered ? " answered" : ""));
      CHECK(drawn.card.missing.isEmpty());
      for (const QSize size : kScreens) {
        const QImage image = pictureOf(drawn, size);
        const QRgb paper = coloursOf(Scheme::projector).paper.rgb();
        int inside = 0;
        bool clean = true;
        // 2.5 % of the width left and right, 1.5 % of the height above and below stay empty.
        const int side = size.width() / 40, above = size.height() * 3 / 200;
        for (int y = 0; y < size.height(); ++y) {
          for (int x = 0; x < size.width(); ++x) {
            if (image.pixel(x, y) == paper) continue;
            if (x < side || x >= size.width() - side || y < above || y >= size.height() - above) clean = false;
            ++inside;
          }
        }
        CHECK(clean);
        CHECK(inside > size.width() * size.height() / 200);
        if (!folder.isEmpty()) {
          image.save(QStringLiteral("%1/%2-%3%4-%5.png").arg(folder, QString::fromStdString(one.name)).arg(drawn.state.index, 2, 10, QLatin1Char('0')).arg(drawn.state.answered ? QLatin1String("b") : QLatin1String("a")).arg(size.height()));
        }
      }
    }
  }
}

TEST_CASE("An answer changes the card and nothing jumps: the picture stands where it stood") {
  for (const Shipped& one : shippedDecks()) {
    const Speaking speaking(one.language);
    const auto cards = cardsOf(one);
    for (std::size_t i = 0; i < cards.size(); i += 2) {
      if (!cards[i].card.card.reveal) continue;
      INFO(cards[i].card.card.title);
      const QImage before = pictureOf(cards[i], kScreens[0]);
      const QImage after = pictureOf(cards[i + 1], kScreens[0]);
      CHECK(before != after);
      if (cards[i].card.card.show == CardShow::text) continue;
      // The upper third: title and the top of the diagram. Pools and tips are answered in the diagram itself:
      // of theirs the heads of the columns.
      const bool within = cards[i].card.card.show == CardShow::pools || cards[i].card.card.show == CardShow::tips;
      const QRect top(0, 0, kScreens[0].width(), kScreens[0].height() / (within ? 5 : 3));
      CHECK(before.copy(top) == after.copy(top));
    }
  }
}

TEST_CASE("No text on a card is smaller than a 28th of the screen, and words are a 20th") {
  const auto hold = [](const std::vector<Drawn>& cards) {
    for (const Drawn& drawn : cards) {
      for (const QSize size : kScreens) {
        const auto written = writtenOn(drawn, size);
        INFO(drawn.card.card.title << " at " << size.height());
        REQUIRE(written.size() >= 3);
        double least = 1e9;
        bool body = false;
        for (const Written& text : written) {
          least = std::min(least, text.pixels);
          body = body || (text.pixels >= size.height() / 20.0 - kSlack_px);
        }
        CHECK(least >= size.height() / 28.0 - kSlack_px);
        CHECK(body);
      }
    }
  };
  hold(cardsOf(allKinds()));
  for (const Shipped& one : shippedDecks()) {
    const Speaking speaking(one.language);
    hold(cardsOf(one));
  }
}

TEST_CASE("Every text on a card stands out from the projector's ground by 7 to 1") {
  const QColor paper = coloursOf(Scheme::projector).paper;
  for (const Drawn& drawn : cardsOf(allKinds())) {
    for (const Written& text : writtenOn(drawn, kScreens[0])) {
      INFO(text.words.toStdString() << " in " << text.colour.name().toStdString());
      CHECK(test::contrast(text.colour, paper) >= 7.0);
    }
  }
}

TEST_CASE("Words stand out from every ground of every scheme by 4.5 to 1, on the projector by 7 to 1") {
  for (const Scheme scheme : {Scheme::light, Scheme::dark, Scheme::sunlight, Scheme::projector}) {
    const Colours c = coloursOf(scheme);
    const double wanted = scheme == Scheme::projector ? 7.0 : 4.5;
    for (const QColor& ground : {c.paper, c.band, c.card}) {
      for (const QColor& words : {c.ink, c.slate, c.ochreWord, c.brick, c.river}) {
        INFO(int(scheme) << " " << words.name().toStdString() << " on " << ground.name().toStdString());
        CHECK(test::contrast(words, ground) >= wanted);
      }
    }
    // Glyphs and curves are no words: 3 to 1 (WCAG 2.1, 1.4.11).
    for (const QColor& ground : {c.paper, c.card}) {
      for (const QColor& shape : {c.alder, c.ochreLine, c.brick, c.river}) {
        INFO(int(scheme) << " " << shape.name().toStdString() << " on " << ground.name().toStdString());
        CHECK(test::contrast(shape, ground) >= 3.0);
      }
    }
  }
}

TEST_CASE("Setups A and B are told apart, and seen on their ground, with each of three colour weaknesses") {
  constexpr double kTold = 20;  // CIE 1976 distance; 2.3 is just noticeable
  for (const Scheme scheme : {Scheme::light, Scheme::dark, Scheme::sunlight, Scheme::projector}) {
    const Colours c = coloursOf(scheme);
    for (const Matrix* seen : std::initializer_list<const Matrix*>{nullptr, &kProtan, &kDeutan, &kTritan}) {
      INFO(int(scheme));
      CHECK(apart(c.river, c.ochreLine, seen) >= kTold);
      CHECK(apart(c.river, c.paper, seen) >= kTold);
      CHECK(apart(c.ochreLine, c.paper, seen) >= kTold);
    }
  }
}

TEST_CASE("Every figure that stands with an answer is in the words of the answer") {
  static const QRegularExpression kNumber(QStringLiteral("[0-9]+(?:[.,][0-9]+)?"));
  const auto numbersIn = [](const QString& words) {
    QStringList found;
    for (auto at = kNumber.globalMatch(words); at.hasNext();) found.append(at.next().captured(0));
    return found;
  };
  int figures = 0, depths = 0;
  for (const Shipped& one : shippedDecks()) {
    const Speaking speaking(one.language);
    for (const Drawn& drawn : cardsOf(one)) {
      const Card& card = drawn.card.card;
      if (!drawn.state.answered || !card.reveal) continue;
      const QString reveal = QString::fromStdString(*card.reveal);
      const QStringList said = numbersIn(reveal);
      INFO(card.title << ": " << reveal.toStdString());
      const auto holds = [&](const QString& painted) {
        INFO(painted.toStdString());
        const QStringList numbers = numbersIn(painted);
        for (const QString& number : numbers) CHECK(said.contains(number));
        if (numbers.isEmpty()) CHECK(reveal.contains(painted, Qt::CaseInsensitive));
      };
      for (const Figure& figure : figuresOf(drawn.card, test::kTrade)) {
        ++figures;
        holds(figure.number);
      }
      for (const DepthRow& row : drawn.card.pools) {
        ++depths;
        holds(depthIn(row, test::kTrade));
      }
      if (!drawn.card.tips || drawn.card.tips->pools.size() > 1) continue;
      QStringList cells;
      for (const WalletCell& cell : drawn.card.tips->cells) cells.append(depthIn(cell, test::kTrade));
      for (const QString& number : said) CHECK(cells.contains(number));
    }
  }
  const int spoken = int(languages().size());
  CHECK(figures >= 25 * spoken);  // or they would all be in nothing
  CHECK(depths == 4 * spoken);
}

TEST_CASE("The figures of the shipped cards are a tenth of the screen high, and none stands before the answer or while hidden") {
  const auto height = [](const std::vector<Written>& all, const QString& words) {
    double most = 0;
    for (const Written& text : all) {
      if (text.words == words) most = std::max(most, text.pixels);
    }
    return most;
  };
  int checked = 0, axes = 0;
  for (const Shipped& one : shippedDecks()) {
    const Speaking speaking(one.language);
    for (Drawn& drawn : cardsOf(one)) {
      const QSize size = kScreens[1];
      const auto written = writtenOn(drawn, size);
      INFO(drawn.card.card.title);
      const CardShow show = drawn.card.card.show;
      if (show == CardShow::profile || show == CardShow::compare || show == CardShow::river || show == CardShow::pools) {
        ++axes;
        CHECK(height(written, QStringLiteral("0 ft")) >= size.height() / 28.0 - kSlack_px);
      }
      QStringList numbers;
      for (const Figure& figure : figuresOf(drawn.card, test::kTrade)) numbers.append(figure.number);
      for (const DepthRow& row : drawn.card.pools) numbers.append(depthIn(row, test::kTrade));
      for (const Part& fly : drawn.card.flies) numbers.append(massText(fly.fly->wetMass(), test::kTrade));
      for (const QString& number : numbers) {
        INFO(number.toStdString());
        const double tenth = size.height() / 10.0 - kSlack_px;
        CHECK((height(written, number) >= tenth) == drawn.state.answered);
        drawn.state.numbers = false;
        CHECK(height(writtenOn(drawn, size), number) < tenth);
        drawn.state.numbers = true;
        ++checked;
      }
    }
  }
  const int spoken = int(languages().size());
  CHECK(checked >= 60 * spoken);
  CHECK(axes >= 30 * spoken);
}

TEST_CASE("Nothing is written over the figures of a shipped card, in any language") {
  int large = 0;
  for (const Shipped& one : shippedDecks()) {
    const Speaking speaking(one.language);
    for (const Drawn& drawn : cardsOf(one)) {
      if (!drawn.state.answered) continue;
      for (const QSize size : kScreens) {
        const auto written = writtenOn(drawn, size);
        for (std::size_t i = 0; i < written.size(); ++i) {
          if (written[i].pixels < size.height() / 10.0 - kSlack_px) continue;
          ++large;
          const QRectF figure = written[i].box(true);
          INFO(one.name << ", " << drawn.card.card.title << ": " << written[i].words.toStdString());
          CHECK(QRectF(QPointF(), size).contains(figure));
          for (std::size_t j = 0; j < written.size(); ++j) {
            if (i == j) continue;
            INFO(written[j].words.toStdString());
            CHECK_FALSE(figure.intersects(written[j].box(false)));
          }
        }
      }
    }
  }
  CHECK(large >= 200);  // or they would all be in nothing
}

TEST_CASE("Verdicts are told apart by their shapes alone, and seen on their ground with each colour weakness") {
  constexpr double kSeen = 20;
  for (const Scheme scheme : {Scheme::light, Scheme::dark, Scheme::sunlight, Scheme::projector}) {
    Colours c = coloursOf(scheme);
    for (const Matrix* seen : std::initializer_list<const Matrix*>{nullptr, &kProtan, &kDeutan, &kTritan}) {
      for (const QColor& verdict : {c.alder, c.ochreLine, c.brick}) {
        INFO(int(scheme) << " " << verdict.name().toStdString());
        for (const QColor& ground : {c.paper, c.card}) CHECK(apart(verdict, ground, seen) >= kSeen);
      }
    }
    c.alder = c.ochreLine = c.brick = c.ink;
    std::vector<QImage> shapes;
    for (const Glyph glyph : {Glyph::circle, Glyph::triangle, Glyph::square}) {
      QImage image(16, 16, QImage::Format_RGB32);
      image.fill(c.paper);
      QPainter p(&image);
      paintGlyph(p, QRectF(0, 0, 16, 16), glyph, c);
      p.end();
      for (const QImage& other : shapes) CHECK(image != other);
      shapes.push_back(image);
    }
  }
}

TEST_CASE("A card that lacks its rig says which in place of a picture") {
  const auto cards = cardsOf(allKinds());
  QStringList words;
  for (const Written& text : writtenOn(cards.back(), kScreens[0])) words.append(text.words);
  CHECK(words.join(QLatin1Char(' ')).contains(QLatin1String("gone.rig.json")));
}

}  // namespace grainwise::ui
