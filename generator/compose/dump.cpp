#include <algorithm>
#include <utility>
#include <variant>

#include "base/text.h"
#include "compose/compose.h"

namespace loamsheet {
namespace {

std::string written(const Words& words) {
  static constexpr const char* marks[] = {"", "*", "_"};  // regular, bold, italic
  std::string out;
  for (const auto& run : words) {
    const char* mark = marks[static_cast<int>(run.face)];
    out += mark + run.text + mark;
  }
  return out;
}

std::string lines(const std::string& kind, const std::vector<Words>& items) {
  std::string out;
  for (const auto& item : items) out += "  " + kind + ' ' + written(item) + '\n';
  return out;
}

// A cell that says what the one above it says is a ditto mark.
std::string cells(const std::vector<Words>& row, const std::vector<Words>* above) {
  std::string out;
  for (size_t c = 0; c < row.size(); ++c) {
    const std::string cell = written(row[c]);
    const bool same = above && c < above->size() && !cell.empty() && written((*above)[c]) == cell;
    out += " | " + (same ? "″" : cell);
  }
  return out;
}

std::string days(const CalendarGrid::Week& week) {
  static constexpr const char* states[] = {"", " closed", " outside"};
  std::string out;
  for (const auto& cell : week.days) {
    out += " | " + cell.day + states[static_cast<int>(cell.state)];
    out += cell.milestone ? " milestone" : "";
  }
  return out;
}

// What a calendar says, each once with the days, or the weeks, it is said on.
std::string written_on(const CalendarGrid& calendar) {
  std::vector<std::pair<std::string, std::string>> said;
  const auto add = [&](const std::string& words, const std::string& when) {
    const auto of = [&](const auto& other) { return other.first == words; };
    auto found = std::find_if(said.begin(), said.end(), of);
    if (found == said.end()) found = said.insert(said.end(), {words, ""});
    found->second += " | " + when;
  };
  for (const auto& week : calendar.weeks) {
    if (!week.every_day.empty()) add("every day " + written(week.every_day), week.days.front().day);
    for (const auto& cell : week.days) {
      for (const auto& line : cell.lines) add("line " + written(line), cell.day);
    }
  }
  std::string out;
  for (const auto& [words, when] : said) out += "  " + words + when + '\n';
  return out;
}

struct Dump {
  std::string operator()(const Heading& h) const {
    return "  heading " + std::to_string(h.level) + ' ' + h.text + '\n';
  }
  std::string operator()(const Paragraph& p) const {
    return (p.small ? "  small " : "  paragraph ") + written(p.words) + '\n';
  }
  std::string operator()(const BulletList& l) const { return lines("bullet", l.items); }
  std::string operator()(const TickList& l) const { return lines("tick", l.items); }
  std::string operator()(const Blank& b) const { return "  blank " + written(b.label) + '\n'; }
  std::string operator()(const Facts& f) const {
    std::string out;
    for (const auto& fact : f.facts) {
      out += "  fact " + fact.label + " = " + written(fact.value);
      out += fact.note.empty() ? "\n" : " (" + fact.note + ")\n";
    }
    return out;
  }
  std::string operator()(const Table& t) const {
    std::string out = "  table";
    for (const auto& column : t.columns) out += " | " + column.title;
    out += t.caption.empty() ? "\n" : " (" + t.caption + ")\n";
    for (size_t r = 0; r < t.rows.size(); ++r) {
      out += "  row" + cells(t.rows[r], r > 0 ? &t.rows[r - 1] : nullptr) + '\n';
    }
    return out;
  }
  std::string operator()(const Callout& c) const {
    return "  callout " + c.title + '\n' + lines("line", c.lines);
  }
  std::string operator()(const FigureBlock& f) const {
    return "  figure " + f.id + ' ' + f.caption + " | " + f.alt + '\n';
  }
  std::string operator()(const Steps& s) const {
    std::string out;
    for (const auto& step : s.steps) {
      out += "  step " + step.number + ' ' + written(step.words);
      out += step.minutes.empty() ? "\n" : " (" + step.minutes + ")\n";
    }
    return out;
  }
  std::string operator()(const CalendarGrid& c) const {
    std::string out = "  calendar";
    for (const auto& day : c.weekdays) out += " | " + day;
    out += '\n';
    for (const auto& week : c.weeks) out += "  week" + days(week) + '\n';
    return out + written_on(c);
  }
};

// The first heading says the title of most parts.
std::string title_of(const Part& part) {
  const auto* heading = part.blocks.empty() ? nullptr : std::get_if<Heading>(&part.blocks.front());
  return heading && heading->text == part.title ? "" : ' ' + part.title;
}

}  // namespace

std::string dump(const Sheet& sheet) {
  std::string out = "sheet " + sheet.title + '\n';
  out += "head " + sheet.running_left + " | " + sheet.running_right + '\n';
  for (const auto& part : sheet.parts) {
    out += "part " + part.id + title_of(part) + '\n';
    for (const auto& block : part.blocks) out += std::visit(Dump{}, block);
  }
  return out;
}

}  // namespace loamsheet
