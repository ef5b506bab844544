// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/look.h"

#include <QFontDatabase>
#include <algorithm>
#include <cmath>

namespace grainwise::ui {
namespace {

QColor hex(const char* name) { return QColor(QLatin1String(name)); }

Colours lightColours() {
  return {.paper = hex("#F6F4EE"), .band = hex("#EDE9DF"), .card = hex("#FFFFFF"),
          .edge = hex("#D9D3C5"), .ink = hex("#1D282D"), .slate = hex("#4C6470"),
          .river = hex("#16697A"), .riverFill = hex("#DDE6E4"), .sinkFill = hex("#3D5560"),
          .sinkHatch = hex("#26393F"), .onSink = hex("#F6F4EE"), .alder = hex("#55772F"),
          .ochreLine = hex("#B7791F"), .ochreWord = hex("#8F5A10"), .brick = hex("#A23B3B"),
          .pill = hex("#1D282D"), .onPill = hex("#F6F4EE"), .flyBody = hex("#7D7060")};
}

Colours darkColours() {
  return {.paper = hex("#182125"), .band = hex("#212C31"), .card = hex("#263238"),
          .edge = hex("#3A484F"), .ink = hex("#ECE8DD"), .slate = hex("#A9B9C0"),
          .river = hex("#6FB9C7"), .riverFill = hex("#27414A"), .sinkFill = hex("#7C98A4"),
          .sinkHatch = hex("#A9C0C9"), .onSink = hex("#10181B"), .alder = hex("#9CBF73"),
          .ochreLine = hex("#D9A04A"), .ochreWord = hex("#E3B366"), .brick = hex("#E08A84"),
          .pill = hex("#ECE8DD"), .onPill = hex("#182125"), .flyBody = hex("#9C8F7C")};
}

Colours sunlightColours() {
  return {.paper = hex("#FFFFFF"), .band = hex("#F2F2F2"), .card = hex("#FFFFFF"),
          .edge = hex("#8A9297"), .ink = hex("#0B1114"), .slate = hex("#2F3E45"),
          .river = hex("#0B4C59"), .riverFill = hex("#E4EEF0"), .sinkFill = hex("#26393F"),
          .sinkHatch = hex("#0B1114"), .onSink = hex("#FFFFFF"), .alder = hex("#3A5A18"),
          .ochreLine = hex("#8F5A10"), .ochreWord = hex("#6F4408"), .brick = hex("#8A2626"),
          .pill = hex("#0B1114"), .onPill = hex("#FFFFFF"), .flyBody = hex("#5C5142")};
}

Colours projectorColours() {
  return {.paper = hex("#11191C"), .band = hex("#1A2428"), .card = hex("#1A2428"),
          .edge = hex("#46555C"), .ink = hex("#F8F6F0"), .slate = hex("#C4D0D5"),
          .river = hex("#7CC7D6"), .riverFill = hex("#11191C"), .sinkFill = hex("#2F525B"),
          .sinkHatch = hex("#7CC7D6"), .onSink = hex("#F8F6F0"), .alder = hex("#B4DB86"),
          .ochreLine = hex("#F0B556"), .ochreWord = hex("#F5C880"), .brick = hex("#FF9F97"),
          .pill = hex("#F8F6F0"), .onPill = hex("#11191C"), .flyBody = hex("#C0B29C")};
}

}  // namespace

Colours coloursOf(Scheme scheme) {
  switch (scheme) {
    case Scheme::dark:
      return darkColours();
    case Scheme::sunlight:
      return sunlightColours();
    case Scheme::projector:
      return projectorColours();
    case Scheme::light:
      break;
  }
  return lightColours();
}

Look::Look(QObject* parent) : QObject(parent) {}

void Look::setScheme(Scheme scheme) { wear(scheme, false); }

void Look::followSystem() { wear(m_systemDark ? Scheme::dark : Scheme::light, true); }

void Look::setSystemDark(bool dark) {
  m_systemDark = dark;
  if (m_followsSystem) followSystem();
}

void Look::wear(Scheme scheme, bool followsSystem) {
  if (scheme == m_scheme && followsSystem == m_followsSystem) return;
  m_followsSystem = followsSystem;
  m_scheme = scheme;
  m_colours = coloursOf(scheme);
  Q_EMIT changed();
}

void Look::setUnits(DisplayUnits units) {
  if (units == m_units) return;
  m_units = units;
  Q_EMIT changed();
}

void Look::setTypeScale(double scale) {
  scale = std::isfinite(scale) ? std::clamp(scale, 1.0, 2.0) : 1.0;  // settings may hold anything
  if (scale == m_typeScale) return;
  m_typeScale = scale;
  Q_EMIT changed();
}

void Look::setReduceMotion(bool reduce) {
  if (reduce == m_reduceMotion) return;
  m_reduceMotion = reduce;
  Q_EMIT changed();
}

QFont Look::font(int pixels, bool bold) const {
  // Both families have tabular figures by default; the second is on every Debian desktop.
  static const QStringList families{QStringLiteral("Noto Sans"), QStringLiteral("DejaVu Sans")};
  const int size = px(pixels);
  QFont& font = m_fonts[{size, bold}];
  if (font.pixelSize() == size) return font;
  font.setFamilies(families);
  font.setPixelSize(size);
  font.setBold(bold);
  return font;
}

int Look::px(double pixels) const { return static_cast<int>(std::lround(pixels * m_typeScale)); }

QPalette Look::palette() const {
  const Colours& c = m_colours;
  QPalette p(c.ink, c.card, c.card.lighter(110), c.edge.darker(120), c.edge, c.ink, c.ink, c.card,
             c.paper);
  p.setColor(QPalette::ToolTipBase, c.card);
  p.setColor(QPalette::ToolTipText, c.ink);
  p.setColor(QPalette::Highlight, c.river);
  p.setColor(QPalette::HighlightedText, c.paper);
  p.setColor(QPalette::PlaceholderText, c.slate);
  p.setColor(QPalette::Link, c.river);
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
    p.setColor(QPalette::Disabled, role, c.slate);
  }
  return p;
}

}  // namespace grainwise::ui
