// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QPaintDevice>
#include <QPaintEngine>
#include <QPainter>
#include <QRectF>
#include <QString>

namespace grainwise::test {

/// A run of text as it was painted: where it stands and what of the device may be painted there.
struct PaintedText {
  QString text;
  QRectF place;
  QRectF room;  ///< the clip; the whole device where there is none
};

/// A device that paints nothing and remembers every text: what a person reads on a widget or a sheet,
/// whether a label says it or a paintEvent.
class TextCatcher : public QPaintDevice {
 public:
  explicit TextCatcher(QSize size, int dpi = 96) : m_size(size), m_dpi(dpi), m_engine(this) {}

  [[nodiscard]] const QList<PaintedText>& texts() const { return m_texts; }
  [[nodiscard]] QPaintEngine* paintEngine() const override { return &m_engine; }

 protected:
  int metric(PaintDeviceMetric what) const override {
    constexpr double kMillimetresPerInch = 25.4;
    switch (what) {
      case PdmWidth:
        return m_size.width();
      case PdmHeight:
        return m_size.height();
      case PdmWidthMM:
        return int(m_size.width() * kMillimetresPerInch / m_dpi);
      case PdmHeightMM:
        return int(m_size.height() * kMillimetresPerInch / m_dpi);
      case PdmNumColors:
        return 1 << 24;
      case PdmDepth:
        return 32;
      case PdmDevicePixelRatio:
        return 1;
      case PdmDevicePixelRatioScaled:
        return int(devicePixelRatioFScale());
      default:
        return m_dpi;
    }
  }

 private:
  class Engine : public QPaintEngine {
   public:
    explicit Engine(TextCatcher* to) : QPaintEngine(AllFeatures), m_to(to) {}
    bool begin(QPaintDevice*) override { return true; }
    bool end() override { return true; }
    void updateState(const QPaintEngineState&) override {}
    void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
    void drawImage(const QRectF&, const QImage&, const QRectF&, Qt::ImageConversionFlags) override {}
    void drawTiledPixmap(const QRectF&, const QPixmap&, const QPointF&) override {}
    void drawPath(const QPainterPath&) override {}
    void drawPolygon(const QPointF*, int, PolygonDrawMode) override {}
    void drawRects(const QRectF*, int) override {}
    void drawLines(const QLineF*, int) override {}
    void drawEllipse(const QRectF&) override {}
    void drawPoints(const QPointF*, int) override {}
    [[nodiscard]] Type type() const override { return User; }
    void drawTextItem(const QPointF& at, const QTextItem& item) override {
      const QRectF box(at.x(), at.y() - item.ascent(), item.width(), item.ascent() + item.descent());
      const QTransform& to = painter()->combinedTransform();
      QRectF room(QPointF(), QSizeF(m_to->m_size));
      if (painter()->hasClipping()) room &= to.mapRect(painter()->clipBoundingRect());
      m_to->m_texts.append({item.text(), to.mapRect(box), room});
    }

   private:
    TextCatcher* m_to;
  };

  QSize m_size;
  int m_dpi;
  QList<PaintedText> m_texts;
  mutable Engine m_engine;
};

}  // namespace grainwise::test
