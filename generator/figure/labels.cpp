#include "figure/labels.h"

#include <algorithm>

#include "base/text.h"

namespace loamsheet {
namespace {

// mm: between labels, between leaders at the column's edge, from a leader's end to its text.
constexpr double label_gap = 1.3, leader_gap = 0.3, text_gap = 0.9;

struct Block {
  std::vector<Text> lines;
  double height(const Typefaces& type) const {
    double sum = (lines.size() - 1) * pitch_mm(lines.front());
    const Box first = label_at(type, lines.front(), {}).box;
    return sum + first.height();
  }
};

// The words in lines no wider than `width`, a word longer than that on a line of its own.
void wrap(std::vector<Text>& lines, const Typefaces& type, const Text& text, double width) {
  std::string row;
  for (const std::string& word : split(text.words, ' ')) {
    const std::string longer = row.empty() ? word : row + ' ' + word;
    if (!row.empty() && width_mm(type, {longer, text.size, text.face}) > width) {
      lines.push_back({row, text.size, text.face});
      row = word;
    } else {
      row = longer;
    }
  }
  if (!row.empty()) lines.push_back({row, text.size, text.face});
}

Block block_of(const Typefaces& type, const Lettering& size, const Target& t, double width) {
  Block block;
  wrap(block.lines, type, {t.name, size.label, Face::bold}, width);
  wrap(block.lines, type, {t.detail, size.label, Face::regular}, width);
  return block;
}

std::vector<double> block_centres(const Typefaces& type, const std::vector<Target>& targets,
                                  const std::vector<Block>& blocks, const LabelLimits& limits) {
  std::vector<LabelPiece> pieces;
  for (size_t i = 0; i < blocks.size(); ++i) {
    pieces.push_back({targets[i].at.y, blocks[i].height(type)});
  }
  return spread(pieces, label_gap, limits);
}

// Level leaders at different heights never cross, nor do the slants of a fan in the same order;
// dots at the same height are moved apart by less than they are large.
void part(std::vector<Target>& targets) {
  std::vector<LabelPiece> pieces;
  for (const Target& t : targets) pieces.push_back({t.at.y, 0});
  const auto heights = spread(pieces, leader_gap, {-1e9, 1e9});
  for (size_t i = 0; i < targets.size(); ++i) targets[i].at.y = heights[i];
}

struct Placed {
  const Target& target;
  double centre;  // of the block
};

void place(Marks& out, const Typefaces& type, const Block& block, const Placed& p,
           const Column& column) {
  const Text& first = block.lines.front();
  const double em = first.size * mm_per_point;
  const FaceMetrics m = type.metrics(first.face);
  double base = p.centre + block.height(type) / 2 - m.cap_height * 1.08 * em;
  const Point end{column.left - text_gap, base + m.x_height * em / 2};
  out.push_back(Leader{{end, {column.edge, p.target.at.y}, p.target.at}, pen::narrow});
  for (const Text& line : block.lines) {
    out.push_back(label_at(type, line, {column.left, base}));
    base -= pitch_mm(line);
  }
}

bool above(const Target& a, const Target& b) {
  return a.at.y != b.at.y ? a.at.y > b.at.y : a.at.x > b.at.x;
}

}  // namespace

Marks place_labels(const Typefaces& type, const Lettering& size, std::vector<Target> targets,
                   const Column& column) {
  std::stable_sort(targets.begin(), targets.end(), above);
  part(targets);
  std::vector<Block> blocks;
  for (const Target& t : targets) blocks.push_back(block_of(type, size, t, column.width));
  const auto centres = block_centres(type, targets, blocks, column.limits);
  Marks out;
  for (size_t i = 0; i < targets.size(); ++i) {
    place(out, type, blocks[i], {targets[i], centres[i]}, column);
  }
  return out;
}

}  // namespace loamsheet
