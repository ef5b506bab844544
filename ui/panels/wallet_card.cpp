// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/wallet_card.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QPixmap>
#include <algorithm>

#include "ui/document/whole_file.h"
#include "ui/text/choice_words.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

class Card {
  Q_DECLARE_TR_FUNCTIONS(WalletCard)
 public:
  Card(QPainter& p, const QRectF& inside, double size_pt)
      : m_p(p), m_box(inside), m_size(size_pt), m_y(inside.top()) {}

  double draw(const PackedWallet& packed, DisplayUnits units) {
    title(packed);
    slotLines(packed, units);
    uses(packed, units);
    nothing(packed, units);
    cautions();
    return m_y - m_box.top();
  }

 private:
  QFont font(double factor, bool bold = false) const {
    QFont f;
    f.setFamilies({QStringLiteral("Noto Sans"), QStringLiteral("DejaVu Sans")});
    f.setPixelSize(std::max(1, int(m_size * factor)));
    f.setBold(bold);
    return f;
  }

  void text(const QString& words, double factor = 1.0, bool bold = false, double indent = 0.0) {
    m_p.setFont(font(factor, bold));
    const QRectF room(m_box.left() + indent, m_y, m_box.width() - indent, 10000);
    const QRectF used = m_p.boundingRect(room, Qt::TextWordWrap, words);
    m_p.drawText(QRectF(room.left(), m_y, room.width(), used.height()), Qt::TextWordWrap, words);
    m_y += used.height() + m_size * 0.15;
  }
  void gap() { m_y += m_size * 0.7; }

  void title(const PackedWallet& packed) {
    const auto tips = packed.wallet.tips.size();
    text(tips == 1 ? tr("Wallet: 1 tip") : tr("Wallet: %1 tips").arg(tips), 1.5, true);
    text(tr("%1. Depths are estimates.").arg(QLocale().toString(QDate::currentDate(),
                                                                QLocale::ShortFormat)));
    gap();
  }

  void slotLines(const PackedWallet& packed, DisplayUnits units) {
    for (std::size_t i = 0; i < packed.wallet.tips.size(); ++i) {
      const auto& spares = packed.wallet.spares;
      const bool spare = std::find(spares.begin(), spares.end(), i) != spares.end();
      const QString name = choiceName(packed.question.shelf, packed.wallet.tips[i], units);
      const QString line = tr("%1   %2", "slot, tip").arg(i + 1).arg(name);
      text(spare ? tr("%1   (and a spare)", "slot and tip").arg(line) : line, 1.1, true);
    }
    gap();
  }

  void uses(const PackedWallet& packed, DisplayUnits units) {
    std::size_t pool = packed.question.pools.pools.size();
    for (const WalletUse& use : packed.wallet.uses) {
      if (!use.served) continue;
      if (use.pool != pool) {
        pool = use.pool;
        text(QString::fromStdString(packed.question.pools.pools[pool].name), 1.0, true);
      }
      const Rig& rig = packed.question.rigs[use.rig];
      const QString what = use.slot ? tr("slot %1").arg(*use.slot + 1) : tr("no tip");
      const QString depth =
          use.cell.band ? bandWords(*use.cell.band, use.cell.onBottom, units) : QString();
      QString line = tr("%1: %2", "fly: slot").arg(partWords(rig.parts[*rig.flyIndex()], units), what);
      if (!depth.isEmpty()) line = tr("%1, %2", "fly and slot, depth").arg(line, depth);
      if (use.cell.standing == Standing::watch) line = tr("%1 (watch)").arg(line);
      text(line, 1.0, false, m_size);
    }
    gap();
  }

  void nothing(const PackedWallet& packed, DisplayUnits units) {
    if (packed.wallet.uncovered() == 0) return;
    text(tr("Nothing serves"), 1.0, true);
    for (const WalletUse& use : packed.wallet.uses) {
      if (use.served) continue;
      const Rig& rig = packed.question.rigs[use.rig];
      text(tr("%1, %2: %3", "pool, fly: why")
               .arg(QString::fromStdString(packed.question.pools.pools[use.pool].name),
                    partWords(rig.parts[*rig.flyIndex()], units),
                    uncoveredWords(use, packed.question.shelf, *packed.grid, units)),
           1.0, false, m_size);
    }
    gap();
  }

  void cautions() {
    text(tr("Local rules on weighted lines and flies, lead, barbs and hooks decide, not this card. No "
            "guide to wading. Rods conduct: keep clear of power lines, and stop in lightning."),
         0.9);
  }

  QPainter& m_p;
  QRectF m_box;
  double m_size;
  double m_y;
};

constexpr double kLargest_pt = 12.0, kSmallest_pt = 6.0;

}  // namespace

double paintWalletCard(QPainter& p, const QRectF& inside, const PackedWallet& packed,
                       DisplayUnits units) {
  p.setPen(Qt::black);
  // Measured on a picture of nothing first, so that what is too long gets smaller type.
  QPixmap nowhere(1, 1);
  for (double size = kLargest_pt; size > kSmallest_pt; size -= 0.5) {
    QPainter measure(&nowhere);
    if (Card(measure, inside, size).draw(packed, units) <= inside.height()) {
      measure.end();
      return Card(p, inside, size).draw(packed, units);
    }
  }
  return Card(p, inside, kSmallest_pt).draw(packed, units);
}

bool writeWalletCard(const QString& path, const PackedWallet& packed, DisplayUnits units,
                     QString* why) {
  QBuffer paper;
  paper.open(QIODevice::WriteOnly);
  {
    QPdfWriter pdf(&paper);
    pdf.setPageSize(QPageSize(QPageSize::A4));
    pdf.setTitle(QCoreApplication::translate("WalletCard", "Wallet"));
    pdf.setCreator(QStringLiteral("Grainwise"));
    constexpr int kPointsPerInch = 72;
    pdf.setResolution(kPointsPerInch * 10);
    QPainter p(&pdf);
    p.scale(10, 10);
    const QRectF page(0, 0, pdf.width() / 10.0, pdf.height() / 10.0);
    paintWalletCard(p, page.adjusted(18, 18, -18, -18), packed, units);
  }
  *why = writeWhole(path, paper.data());
  return why->isEmpty();
}

}  // namespace grainwise::ui
