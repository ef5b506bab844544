// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/strip_access.h"

#include <QAccessibleWidget>

#include "ui/strip/block.h"
#include "ui/strip/junction_tag.h"
#include "ui/strip/strip_view.h"

namespace grainwise::ui {
namespace {

class BlockAccess : public QAccessibleWidget {
 public:
  explicit BlockAccess(Block* block) : QAccessibleWidget(block, QAccessible::ListItem), m_block(block) {}

  [[nodiscard]] QAccessible::State state() const override {
    QAccessible::State state = QAccessibleWidget::state();
    state.selectable = true;
    state.selected = m_block->isSelected();
    state.movable = true;
    return state;
  }
  [[nodiscard]] QStringList actionNames() const override {
    return {pressAction(), increaseAction(), decreaseAction(), setFocusAction()};
  }
  [[nodiscard]] QString localizedActionDescription(const QString& name) const override {
    if (name == pressAction()) return Block::tr("Opens the part for editing");
    if (name == increaseAction()) return Block::tr("Moves the part towards the fly");
    if (name == decreaseAction()) return Block::tr("Moves the part towards the rod");
    return QAccessibleWidget::localizedActionDescription(name);
  }
  void doAction(const QString& name) override {
    if (name == pressAction()) {
      m_block->askToSelect();
      m_block->askToOpen();
    } else if (name == increaseAction() || name == decreaseAction()) {
      m_block->askToMove(name == increaseAction() ? 1 : -1);
    } else {
      QAccessibleWidget::doAction(name);
    }
  }

 private:
  Block* m_block;
};

class TagAccess : public QAccessibleWidget {
 public:
  explicit TagAccess(JunctionTag* tag) : QAccessibleWidget(tag, QAccessible::Button), m_tag(tag) {}

  [[nodiscard]] QStringList actionNames() const override { return {pressAction(), setFocusAction()}; }
  void doAction(const QString& name) override {
    if (name == pressAction()) {
      Q_EMIT m_tag->clicked();
    } else {
      QAccessibleWidget::doAction(name);
    }
  }

 private:
  JunctionTag* m_tag;
};

QAccessibleInterface* stripFactory(const QString&, QObject* object) {
  if (auto* block = qobject_cast<Block*>(object)) return new BlockAccess(block);
  if (auto* tag = qobject_cast<JunctionTag*>(object)) return new TagAccess(tag);
  if (auto* strip = qobject_cast<StripView*>(object)) {
    return new QAccessibleWidget(strip, QAccessible::List);
  }
  return nullptr;
}

}  // namespace

void installStripAccess() {
  static const bool installed = [] {
    QAccessible::installFactory(stripFactory);
    return true;
  }();
  (void)installed;
}

}  // namespace grainwise::ui
