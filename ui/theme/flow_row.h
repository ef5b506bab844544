// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLayout>
#include <QList>

namespace grainwise::ui {

/// Controls side by side that go on in a further row where the width ends: a longer language or larger
/// type makes the row taller, never wider than its place. Bottoms are aligned, so that a button stands
/// beside the field and not beside its name.
class FlowRow : public QLayout {
 public:
  explicit FlowRow(int gap);
  ~FlowRow() override;
  FlowRow(const FlowRow&) = delete;
  FlowRow& operator=(const FlowRow&) = delete;

  void addItem(QLayoutItem* item) override;
  [[nodiscard]] int count() const override { return int(m_items.size()); }
  [[nodiscard]] QLayoutItem* itemAt(int index) const override;
  QLayoutItem* takeAt(int index) override;
  [[nodiscard]] Qt::Orientations expandingDirections() const override { return Qt::Horizontal; }
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;
  [[nodiscard]] QSize minimumSize() const override;
  [[nodiscard]] QSize sizeHint() const override;
  void setGeometry(const QRect& rect) override;

 private:
  /// Lays the items out in `rect`, or only reckons; returns the height that they take.
  int layOut(const QRect& rect, bool place) const;

  QList<QLayoutItem*> m_items;
  int m_gap;
};

}  // namespace grainwise::ui
