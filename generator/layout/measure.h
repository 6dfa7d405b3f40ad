// Pass 1, measure: words broken into lines. Lines are chosen so that there are as few as can be
// and, among those, so that their right ends are even (total fit after Knuth and Plass 1981,
// with the square of the free share of each line but the last as its cost).
#pragma once
#include <string>
#include <vector>

#include "catalogue/style.h"
#include "compose/sheet.h"
#include "type/type.h"

namespace loamsheet {

// How a piece of text is set. Points; grey from 0 black to 1 white.
struct TextStyle {
  double size = 9, leading = 12, grey = 0;
  double drop = 9;  // from the top of a line to its base line: capitals stand in the middle
};

// The style of the measures NAME.size, NAME.leading and, unless black, NAME.grey.
TextStyle text_style(const PageStyle&, const std::string& name, const Typefaces&);

// A stretch of a line in one face; x counts from the line's left end.
struct Piece {
  std::string text;
  Face face = Face::regular;
  double x = 0, width = 0;
};

struct Line {
  std::vector<Piece> pieces;
  double width = 0;
};

// Lines no wider than `measure` points. A word that is wider is broken between letters; a single
// letter that is wider still stands on a line of its own and sticks out, for the caller to find.
// A line end in the words is kept. A line that ends at a blank keeps it, outside its
// width, so that its words stay apart from the next line's when the text is read out or copied.
// Words without ink give no line.
std::vector<Line> break_lines(const Words&, double size, double measure, const Typefaces&);

// The width that the words need when broken wherever they may be, and when never broken.
struct Need {
  double least = 0, most = 0;
};
Need need(const Words&, double size, const Typefaces&);

// All of one face.
Words in_face(std::string text, Face);

}  // namespace loamsheet
