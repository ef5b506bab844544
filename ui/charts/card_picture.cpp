// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/card_picture.h"

#include <QFontMetricsF>
#include <algorithm>
#include <iterator>

#include "core/io/deck_file.h"
#include "ui/text/contexts.h"
#include "ui/text/problem_words.h"

namespace grainwise::ui {
namespace {

void addRig(ShownCard& shown, const std::optional<CardRig>& rig, const std::filesystem::path& folder,
            const Conditions& conditions) {
  if (!rig) return;
  const auto read = rigOfCard(*rig, folder);
  if (read) {
    shown.rigs.emplace_back(*read, conditions);
    return;
  }
  const auto* name = std::get_if<std::string>(&*rig);
  QString what = name ? PictureWords::tr("the rig %1").arg(QString::fromStdString(*name))
                      : PictureWords::tr("a rig");
  if (!read.error().empty()) what += QStringLiteral(": ") + wordingText(read.error().front().what);
  shown.missing.append(what);
}

std::vector<Part> ofKind(const std::vector<Part>& parts, PartKind kind) {
  std::vector<Part> found;
  std::copy_if(parts.begin(), parts.end(), std::back_inserter(found),
               [kind](const Part& part) { return part.kind == kind; });
  return found;
}

/// The flies, pools or tips that a card lays side by side, and what it lacks for that.
void addTables(ShownCard& shown, const Conditions& conditions) {
  const Card& card = shown.card;
  if (card.show == CardShow::flies) {
    shown.flies = ofKind(card.parts, PartKind::fly);
    for (std::size_t i = 0; card.parts.empty() && i < shown.rigs.size(); ++i) {
      const auto more = ofKind(shown.rigs[i].rig->parts, PartKind::fly);
      shown.flies.insert(shown.flies.end(), more.begin(), more.end());
    }
    if (shown.flies.empty()) shown.missing.append(PictureWords::tr("this card names no fly"));
    return;
  }
  if (card.show == CardShow::text) return;
  if (!card.rig) shown.missing.append(PictureWords::tr("this card names no rig"));
  if (card.show != CardShow::pools && card.show != CardShow::tips) return;
  std::vector<Pool> pools = card.pools;
  if (pools.empty() && !shown.rigs.empty()) {
    if (const auto own = poolOf(*shown.rigs.front().rig)) pools.push_back(*own);
  }
  if (pools.empty()) shown.missing.append(PictureWords::tr("this card names no pool"));
  const std::vector<Part> tips = ofKind(card.parts, PartKind::tip);
  if (card.show == CardShow::tips && tips.empty()) shown.missing.append(PictureWords::tr("this card names no tip"));
  if (!shown.missing.empty() || shown.rigs.empty()) return;
  if (card.show == CardShow::pools) {
    shown.pools = depthTable(*shown.rigs.front().rig, pools, conditions);
  } else {
    shown.tips = std::make_shared<const TipTable>(tipTable(*shown.rigs.front().rig, tips, pools, conditions));
  }
}

void paintWords(QPainter& p, const QRectF& box, const QStringList& lines, const PictureStyle& style) {
  p.setFont(style.font(1.3));
  p.setPen(style.colours.ink);
  p.drawText(box, Qt::AlignCenter | Qt::TextWordWrap, lines.join(QLatin1Char('\n')));
}

/// Where the feet run from left to right: room for labels on both sides.
QRectF plotOf(const QRectF& box, const PictureStyle& style) {
  return box.adjusted(style.text * 3.2, 0, -style.text * 1.4, 0);
}

void paintLetter(QPainter& p, const QRectF& box, double middle, Setup setup, const PictureStyle& style) {
  p.setFont(style.font(1.5, true));
  p.setPen(setup == Setup::b ? style.colours.ochreWord : style.colours.river);
  p.drawText(QRectF(box.left(), middle - style.text * 1.5, style.text * 3, style.text * 3),
             Qt::AlignVCenter | Qt::AlignLeft, setupLetter(setup));
}

void paintStrips(QPainter& p, const QRectF& box, const std::vector<PictureRig>& rigs,
                 const FootRange& range, const PictureStyle& style) {
  const double each = box.height() / double(rigs.size());
  for (std::size_t i = 0; i < rigs.size(); ++i) {
    const QRectF row(box.left(), box.top() + each * double(i), box.width(), each * 0.86);
    paintStrip(p, plotOf(row, style), rigs[i], range, setupOf(i, rigs.size()), style);
    if (rigs.size() > 1) paintLetter(p, row, row.center().y(), setupOf(i, rigs.size()), style);
  }
}

void paintLines(QPainter& p, const QRectF& box, const std::vector<PictureRig>& rigs,
                const PictureStyle& style, bool full) {
  const FootRange range = rangeOf(rigs);
  const double each = box.height() / double(rigs.size());
  for (std::size_t i = 0; i < rigs.size(); ++i) {
    const QRectF row(box.left(), box.top() + each * double(i), box.width(), each);
    const CaptionDetail detail = full ? CaptionDetail::full : CaptionDetail::brief;
    const double under = captionsOf(rigs[i], plotOf(row, style), range, style, detail, p.device()).height;
    const double most = row.width() * 0.11;
    const double tall = std::min(most, std::max(style.text, row.height() - under - style.text));
    const double top = row.top() + std::max(0.0, row.height() - under - tall) / 2;
    const QRectF strip(row.left(), top, row.width(), tall);
    const QRectF plot = plotOf(strip, style);
    const Captions captions = captionsOf(rigs[i], plot, range, style, detail, p.device());
    paintCaptions(p, captions, strip.center().y(), style);
    paintStrip(p, plot, rigs[i], range, setupOf(i, rigs.size()), style);
    if (rigs.size() > 1) paintLetter(p, strip, strip.center().y(), setupOf(i, rigs.size()), style);
  }
}

void paintOverProfile(QPainter& p, const QRectF& box, const std::vector<PictureRig>& rigs,
                      const PictureStyle& style, double stripShare) {
  const FootRange range = rangeOf(rigs);
  const double strips = std::min(box.height() * stripShare, box.width() * 0.1 * double(rigs.size()));
  paintStrips(p, QRectF(box.left(), box.top(), box.width(), strips), rigs, range, style);
  QRectF plot = plotOf(box, style);
  plot.setTop(box.top() + strips + style.text * 0.8);
  plot.setBottom(box.bottom() - style.text * 1.8);
  paintProfile(p, plot, rigs, range, style);
}

}  // namespace

ShownCard shownCard(const Card& card, const std::filesystem::path& folder, const Conditions& conditions) {
  ShownCard shown;
  shown.card = card;
  addRig(shown, card.rig, folder, conditions);
  addRig(shown, card.rigB, folder, conditions);
  addTables(shown, conditions);
  return shown;
}

void paintCardPicture(QPainter& p, const QRectF& box, const ShownCard& shown, const PictureStyle& style,
                      bool full, double time_s) {
  p.save();
  p.setRenderHint(QPainter::Antialiasing);
  if (!shown.missing.empty()) {
    QStringList lines{PictureWords::tr("Missing here:")};
    paintWords(p, box, lines + shown.missing, style);
  } else {
    switch (shown.card.show) {
      case CardShow::strip:
        paintLines(p, box, shown.rigs, style, full);
        break;
      case CardShow::profile:
        paintOverProfile(p, box, shown.rigs, style, 0.3);
        break;
      case CardShow::compare:
        paintOverProfile(p, box, shown.rigs, style, 0.45);
        break;
      case CardShow::river:
        if (shown.runs && shown.runs->any()) {
          paintSwing(p, box, shown.rigs, *shown.runs, time_s, style);
        } else {
          paintRiver(p, box, shown.rigs, style);
        }
        break;
      case CardShow::cast:
        if (shown.runs) paintCast(p, box, shown.rigs, *shown.runs, time_s, style);
        break;
      case CardShow::flies:
        paintFlies(p, box, shown.flies, style);
        break;
      case CardShow::pools:
        paintPools(p, box, shown.pools, style);
        break;
      case CardShow::tips:
        if (shown.tips) paintTips(p, box, *shown.tips, style);
        break;
      case CardShow::text:
        break;
    }
  }
  p.restore();
}

}  // namespace grainwise::ui
