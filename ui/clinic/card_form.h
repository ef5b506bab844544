// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <functional>
#include <optional>

#include "core/model/deck.h"
#include "ui/theme/look.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;

namespace grainwise::ui {

/// The words of one card, what it shows and of which rigs, edited in place.
class CardForm : public QWidget {
  Q_OBJECT
 public:
  explicit CardForm(Look* look, QWidget* parent = nullptr);

  /// Shows a card; fields that say the same already keep their cursor.
  void setCard(const std::optional<Card>& card);

  /// The rig and the pools of the bench, and a rig file chosen from the deck's folder (its name from there on).
  std::function<std::optional<Rig>()> benchRig;
  std::function<std::vector<Pool>()> benchPools;
  std::function<QString()> askRigFile;

 Q_SIGNALS:
  /// The card as it is now to be; steps of one gesture become one.
  void edited(const QString& step, const Card& card, const QString& gesture);

 private:
  /// What a card has of one thing, and over its own line the buttons that change it.
  struct Row {
    QWidget* whole;
    QString label;
    QLabel* name;
    QPushButton* bench;
    QPushButton* file;  ///< null where it comes from no file
    QPushButton* none;
  };
  QPlainTextEdit* addText(const QString& name, const QString& label, int lines);
  QLabel* addWords(const QString& label);
  QComboBox* addChoice(const QString& name, QLabel* words);
  Row addRow(const QString& name, const QString& label, bool file);
  void connectText(QPlainTextEdit* field, std::optional<std::string> Card::*member, const QString& step);
  void connectRig(const Row& row, std::optional<CardRig> Card::*member);
  void connectLists();
  void setRow(const Row& row, const QString& words, bool shown);
  void change(const QString& step, const std::function<void(Card&)>& how, const QString& gesture = {});

  Look* m_look;
  std::optional<Card> m_card;
  bool m_filling = false;
  QLineEdit* m_title;
  QPlainTextEdit* m_say;
  QPlainTextEdit* m_ask;
  QPlainTextEdit* m_reveal;
  QPlainTextEdit* m_notes;
  QComboBox* m_show;
  QComboBox* m_figure;
  QLabel* m_figureWords;
  Row m_rig;
  Row m_rigB;
  Row m_parts;
  Row m_pools;
};

/// "Profile": what a card shows, in a word.
QString showWords(CardShow show);
/// "Rods of line": which figures stand with its answer.
QString figureWords(std::optional<CardFigure> figure);

}  // namespace grainwise::ui
