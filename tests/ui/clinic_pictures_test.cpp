// SPDX-License-Identifier: GPL-3.0-or-later
#include <QBuffer>
#include <QDir>
#include <QImage>
#include <QPainter>
#include <QRegularExpression>
#include <QSvgGenerator>
#include <array>
#include <cmath>

#include "tests/ui/clinic_support.h"
#include "ui/clinic/card_page.h"

namespace grainwise::ui {
namespace {

constexpr std::array<QSize, 2> kScreens{QSize(1280, 720), QSize(1920, 1080)};
constexpr double kSlack_px = 0.51;  // of a whole-pixel font size

struct Drawn {
  ShownCard card;
  CardState state;
};

/// Every card of a deck, before and after its answer, with its swings and loops run.
std::vector<Drawn> cardsOf(const Deck& deck) {
  std::vector<Drawn> all;
  for (std::size_t i = 0; i < deck.cards.size(); ++i) {
    ShownCard shown = shownCard(deck.cards[i], test::kDecks);
    shown.runs = runsOf(deck.cards[i].show, shown.rigs);
    for (const bool answered : {false, true}) {
      all.push_back({shown, CardState{int(i), int(deck.cards.size()), answered, true, -1}});
    }
  }
  return all;
}

/// A deck with a card of each kind and one that lacks its rig.
Deck allKinds() {
  Deck deck;
  deck.title = "All kinds";
  for (const CardShow show : {CardShow::strip, CardShow::profile, CardShow::cast, CardShow::river,
                              CardShow::compare, CardShow::text}) {
    Card card;
    card.title = "Kind";
    card.say = "One line.";
    card.ask = "A question?";
    card.reveal = "An answer.";
    card.show = show;
    card.rig = std::string("01-plain-winter.rig.json");
    card.rigB = std::string("wrong-hinge.rig.json");
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

/// What a card is drawn with: each text's font height and colour.
struct Written {
  double pixels;
  QColor colour;
  QString words;
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
      QStringLiteral("<g fill=\"[^\"]*\"[^>]*?stroke=\"(#[0-9a-f]{6}|none)\"|<text fill=\"(#[0-9a-f]{6})\"[^>]*?font-size=\"([0-9.]+)\"[^>]*>([^<]*)<"));
  auto found = kToken.globalMatch(QString::fromUtf8(bytes));
  while (found.hasNext()) {
    const auto match = found.next();
    if (match.captured(3).isEmpty()) continue;
    all.push_back({match.captured(3).toDouble(), QColor(match.captured(2)), match.captured(4).trimmed()});
  }
  return all;
}

double luminance(const QColor& c) {
  const auto linear = [](double v) { return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4); };
  return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF());
}

/// Contrast of two colours, 1 to 21. Source: WCAG 2.1 (2018), relative luminance and contrast ratio.
double contrast(const QColor& a, const QColor& b) {
  const double high = std::max(luminance(a), luminance(b));
  const double low = std::min(luminance(a), luminance(b));
  return (high + 0.05) / (low + 0.05);
}

using Matrix = std::array<std::array<double, 3>, 3>;
/// Full dichromacy in linear RGB. Source: Machado, Oliveira & Fernandes (2009), IEEE TVCG 15(6):1291,
/// table for severity 1.0 (from memory).
constexpr Matrix kProtan{{{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}}};
constexpr Matrix kDeutan{{{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}}};
constexpr Matrix kTritan{{{1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}}};

std::array<double, 3> lab(const QColor& colour, const Matrix* seen) {
  const auto linear = [](double v) { return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4); };
  std::array<double, 3> rgb{linear(colour.redF()), linear(colour.greenF()), linear(colour.blueF())};
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

TEST_CASE("Every card of the shipped decks draws on both screens, whole and within its margins") {
  const QString folder = QString::fromLocal8Bit(qgetenv("GRAINWISE_SHOTS"));
  for (const char* name : test::kDeckNames) {
    for (const Drawn& drawn : cardsOf(test::sampleDeck(name))) {
      INFO(name << " " << drawn.state.index << (drawn.state.answered ? " answered" : ""));
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
          image.save(QStringLiteral("%1/%2-%3%4-%5.png").arg(folder, QLatin1String(name)).arg(drawn.state.index, 2, 10, QLatin1Char('0')).arg(drawn.state.answered ? QLatin1String("b") : QLatin1String("a")).arg(size.height()));
        }
      }
    }
  }
}

TEST_CASE("An answer changes the card and nothing jumps: the picture stands where it stood") {
  for (const char* name : test::kDeckNames) {
    const auto cards = cardsOf(test::sampleDeck(name));
    for (std::size_t i = 0; i < cards.size(); i += 2) {
      if (!cards[i].card.card.reveal) continue;
      INFO(cards[i].card.card.title);
      const QImage before = pictureOf(cards[i], kScreens[0]);
      const QImage after = pictureOf(cards[i + 1], kScreens[0]);
      CHECK(before != after);
      if (cards[i].card.card.show == CardShow::text) continue;
      // The upper third: title and the top of the diagram.
      const QRect top(0, 0, kScreens[0].width(), kScreens[0].height() / 3);
      CHECK(before.copy(top) == after.copy(top));
    }
  }
}

TEST_CASE("No text on a card is smaller than a 28th of the screen, and words are a 20th") {
  std::vector<Deck> decks{allKinds()};
  for (const char* name : test::kDeckNames) decks.push_back(test::sampleDeck(name));
  for (const Deck& deck : decks) {
    for (const Drawn& drawn : cardsOf(deck)) {
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
  }
}

TEST_CASE("Every text on a card stands out from the projector's ground by 7 to 1") {
  const QColor paper = coloursOf(Scheme::projector).paper;
  for (const Drawn& drawn : cardsOf(allKinds())) {
    for (const Written& text : writtenOn(drawn, kScreens[0])) {
      INFO(text.words.toStdString() << " in " << text.colour.name().toStdString());
      CHECK(contrast(text.colour, paper) >= 7.0);
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
        CHECK(contrast(words, ground) >= wanted);
      }
    }
    // Glyphs and curves are no words: 3 to 1 (WCAG 2.1, 1.4.11).
    for (const QColor& ground : {c.paper, c.card}) {
      for (const QColor& shape : {c.alder, c.ochreLine, c.brick, c.river}) {
        INFO(int(scheme) << " " << shape.name().toStdString() << " on " << ground.name().toStdString());
        CHECK(contrast(shape, ground) >= 3.0);
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

TEST_CASE("A card that lacks its rig says which in place of a picture") {
  const auto cards = cardsOf(allKinds());
  QStringList words;
  for (const Written& text : writtenOn(cards.back(), kScreens[0])) words.append(text.words);
  CHECK(words.join(QLatin1Char(' ')).contains(QLatin1String("gone.rig.json")));
}

}  // namespace grainwise::ui
