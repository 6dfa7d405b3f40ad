// sheet: a tree of document blocks with final words. It knows nothing of coordinates.
#pragma once
#include <string>
#include <variant>
#include <vector>

#include "type/type.h"

namespace loamsheet {

struct Run {
  std::string text;
  Face face = Face::regular;
};
using Words = std::vector<Run>;

struct Heading {
  int level = 1;  // 1 is a part's title; levels are never skipped
  std::string text;
};

struct Paragraph {
  Words words;
  bool small = false;
};

struct BulletList {
  std::vector<Words> items;
};

struct TickList {  // boxes to tick by hand
  std::vector<Words> items;
};

// A line to write on, with what to write: "Moisture as placed ........ ".
struct Blank {
  Words label;
};

struct Facts {  // label-value pairs set as a grid
  struct Fact {
    std::string label;
    Words value;
    std::string note;  // small print under the value; may be empty
  };
  int columns = 2;
  std::vector<Fact> facts;
};

struct Table {
  struct Column {
    std::string title;
    bool numeric = false;  // set flush right
    double weight = 1;     // share of spare width
  };
  std::string caption;  // may be empty; read aloud, and set above the table
  std::vector<Column> columns;
  std::vector<std::vector<Words>> rows;
  bool totals = false;       // the last row is a total
  bool tick_column = false;  // a box to tick before each row
  double write_rows = 0;     // mm: least height of a row, and lines between the columns, so that
                             // empty cells can be written in by hand; 0: an ordinary table
};

struct Steps {  // what to do, in order, each with a box to tick
  struct Step {
    std::string number;  // "7"
    Words words;
    std::string minutes;  // set flush right: "20 min"; may be empty
  };
  std::vector<Step> steps;
};

struct CalendarGrid {  // a week a row, to be read from a metre away; for a landscape part
  enum class State { open, closed, outside };  // closed: grey; outside of the dates: hatched
  struct Cell {
    std::string day;  // "7" or "1 March"; may be empty
    State state = State::open;
    bool milestone = false;  // in a heavy frame
    std::vector<Words> lines;
  };
  struct Week {
    std::vector<Cell> days;
    Words every_day;  // in a strip over all of its days; may be empty
  };
  std::vector<std::string> weekdays;  // heads, as many as every week has days
  std::vector<Week> weeks;
};

struct Callout {  // a boxed notice; weight carries its meaning in grey
  enum class Kind { cleared, provisional, not_cleared, caution, note } kind = Kind::note;
  std::string title;
  std::vector<Words> lines;
};

struct FigureBlock {
  std::string id;  // of a figure
  std::string caption, alt;
};

using Block = std::variant<Heading, Paragraph, BulletList, TickList, Blank, Facts, Table, Callout,
                           FigureBlock, Steps, CalendarGrid>;

// One part of the sheet; each starts on its own page.
struct Part {
  std::string id;     // "build", "layers"
  std::string title;  // bookmark; its first block is the level-1 heading
  bool landscape = false;
  std::vector<Block> blocks;
};

struct Sheet {
  std::string title, author, subject, language;  // document metadata
  std::string running_left, running_right;       // head of every page: reference, revision
  std::string page_of, foot;                     // of every page: "Page {page} of {pages}"
  std::string paper;                             // name of a row of base/paper.h
  std::vector<Part> parts;
};

}  // namespace loamsheet
