#include "read/conform.h"

#include "base/text.h"
#include "read/leaf.h"
#include "read/quantity.h"
#include "read/scalar_end.h"

namespace loamsheet {
namespace {

// Where a value hangs: its path, the key before it (line 0 for items) and its row.
struct Place {
  std::string path;
  Span name;
  const Key* row = nullptr;
};

std::string form_words(const Raw& raw) {
  if (raw.form == Raw::Form::list) return "a list";
  return raw.form == Raw::Form::map ? "keys of its own" : "a single value";
}

std::string last_name(std::string_view path) {
  return std::string(path.substr(path.find_last_of('.') + 1));
}

// The bytes of what stands after a comma.
struct Halves {
  size_t begin, end;
};

// "humidity:40 %" where keys are wanted: the text as a key and its value; else empty.
std::string with_blank_after_colon(const Raw& raw) {
  const size_t colon = raw.text.find(':');
  const bool key = raw.form == Raw::Form::scalar && !raw.quoted && colon != std::string::npos &&
                   raw.text.find(' ') > colon && raw.text.find('\n') == std::string::npos;
  return key ? raw.text.substr(0, colon + 1) + ' ' + raw.text.substr(colon + 1) : "";
}

class Conformer {
 public:
  Conformer(const SourceText& source, const Against& against, Complaints& out)
      : source_(source), against_(against), out_(out) {}

  Node root(const Raw&);

 private:
  Node value(const Raw&, Place);
  void leaf(Node&, const Raw&);
  void range(Node&, const Raw&);
  void map(Node&, const Raw&);
  void list(Node&, const Raw&);
  void short_form(Node&, const Raw&);
  bool entry(Node&, const Raw& among, size_t index);
  Place place_of(Node&, const Raw& among, const RawEntry&);
  void table_name(const Node&, const RawEntry&);
  void count(const Node&, const Raw&, size_t entries);
  bool split_number(const Key&, const Raw& before, const Halves& tail);
  void wrong_form(Node&, const Raw&);
  void report(const Key&, const Raw&, const Reading&);
  const Key* item_row(std::string_view list, size_t index) const;
  Span shown_at(const Node&, const Raw&) const;

  const SourceText& source_;
  const Against& against_;
  Complaints& out_;
};

const Key* Conformer::item_row(std::string_view list, size_t index) const {
  const std::string path(list);
  const Key* row = find_key(against_.table, path + "[]");
  return row ? row : find_key(against_.table, path + '[' + std::to_string(index) + ']');
}

// A map or list over several lines is best shown at its key.
Span Conformer::shown_at(const Node& node, const Raw& raw) const {
  const bool lines = (raw.form == Raw::Form::map || raw.form == Raw::Form::list) && !raw.flow;
  return lines && node.name.line > 0 ? node.name : raw.where;
}

void Conformer::report(const Key& key, const Raw& raw, const Reading& r) {
  Diagnostic d = complaint(raw.where, r.message, expectation(key), r.hint);
  if (!r.fix.empty()) d.edit = Edit{raw.where, r.fix};
  out_.add(std::move(d));
}

void Conformer::wrong_form(Node& node, const Raw& raw) {
  const std::string name = last_name(node.path);
  if (raw.form == Raw::Form::nothing) {
    out_.add(complaint(
        raw.where,
        name.empty() ? "nothing is written here" : "nothing is written for '" + name + "'",
        expectation(*node.key), "write a value, or delete the key"));
    return;
  }
  Diagnostic d = complaint(shown_at(node, raw), "'" + name + "' cannot be " + form_words(raw),
                           expectation(*node.key));
  const std::string typed(source_.text().substr(raw.begin, raw.end - raw.begin));
  const bool one_item = node.key->kind == Kind::list && raw.form != Raw::Form::list;
  const std::string parted = with_blank_after_colon(raw);
  const std::string fix = one_item && (raw.flow || raw.form == Raw::Form::scalar)
                              ? '[' + typed + ']'
                          : one_item ? ""
                                     : parted;
  if (!fix.empty()) d.hint = "write '" + shortened(fix) + "'";
  if (!fix.empty()) d.edit = Edit{raw.where, fix};
  out_.add(std::move(d));
  if (!one_item) return;
  node.form = Node::Form::list;  // so that the problems of the item are found, too
  node.items.push_back(value(raw, {node.path + "[0]", Span{}, item_row(node.key->path, 0)}));
}

void Conformer::leaf(Node& node, const Raw& raw) {
  if (!node.key) {
    node.leaf = raw.text;
    return;
  }
  Reading r = read_leaf(*node.key, raw.text, raw.quoted);
  if (!r.ok()) return report(*node.key, raw, r);
  node.leaf = std::move(r.value);
}

void Conformer::range(Node& node, const Raw& raw) {
  const Raw& low = raw.items[0];
  const Raw& high = raw.items[1];
  Reading r = read_range(*node.key, low.text, high.text);
  if (!r.ok()) return report(*node.key, raw, r);
  node.leaf = std::move(r.value);
  node.typed = '[' + low.text + ", " + high.text + ']';
}

bool is_range(const Key& key, const Raw& raw) {
  return key.has(flag::range_ok) && raw.items.size() == 2 &&
         raw.items[0].form == Raw::Form::scalar && raw.items[1].form == Raw::Form::scalar;
}

// "3 ficus-pumila" -> species and count.
void Conformer::short_form(Node& node, const Raw& raw) {
  node.form = Node::Form::map;
  const size_t blank = raw.text.find(' ');
  const bool two = blank != std::string::npos && !raw.quoted;
  if (!two) {
    const bool id = is_id(raw.text);
    Diagnostic d = complaint(raw.where, "'" + shortened(raw.text) + "' has no count before it",
                             "a count and a species, such as " + std::string(node.key->example));
    if (id) d.hint = "write '1 " + raw.text + "'";
    if (id) d.edit = Edit{raw.where, "1 " + raw.text};
    out_.add(std::move(d));
    node.form = Node::Form::leaf;
    return;
  }
  const std::string path(node.key->path);
  const size_t species = raw.text.find_first_not_of(' ', blank);
  Raw count = raw, id = raw;
  count.text = raw.text.substr(0, blank);
  count.end = raw.begin + blank;
  id.text = raw.text.substr(species);
  id.begin = raw.begin + species;
  for (auto& [name, part] : {std::pair<std::string, Raw&>{"species", id}, {"count", count}}) {
    part.where = source_.span(part.begin, part.end);
    const Key* row = find_key(against_.table, path + '.' + name);
    node.entries.emplace_back(name, value(part, {node.path + '.' + name, Span{}, row}));
  }
}

// "12,5 cm" falls apart at its comma in a map or list in braces. True if it did, and was reported.
bool Conformer::split_number(const Key& row, const Raw& before, const Halves& tail) {
  const std::string_view text = source_.text();
  const bool digits = before.form == Raw::Form::scalar && !before.quoted && !before.text.empty() &&
                      before.text.find_first_not_of("-0123456789") == std::string::npos;
  const bool joined = tail.begin == before.end + 1 && tail.begin < text.size() &&
                      text[before.end] == ',' && text[tail.begin] >= '0' && text[tail.begin] <= '9';
  const bool counted = row.kind == Kind::integer || row.kind == Kind::number;
  if (!digits || !joined || !(counted || has_unit(row.kind))) return false;
  Raw whole = before;
  whole.end = tail.end;
  whole.text = text.substr(before.begin, tail.end - before.begin);
  whole.where = source_.span(whole.begin, whole.end);
  const Reading r = read_quantity(row, whole.text);
  if (!r.ok()) report(row, whole, r);
  return !r.ok();
}

// Free names are ids, except at the top of a document.
void Conformer::table_name(const Node& map, const RawEntry& entry) {
  if (!map.key || is_id(entry.key)) return;
  const std::string fix = as_id(entry.key);
  Diagnostic d = complaint(
      entry.name, "'" + shortened(entry.key) + "' is not a name in small letters with hyphens");
  if (!fix.empty()) d.hint = "write '" + fix + "'";
  if (!fix.empty()) d.edit = Edit{entry.name, fix};
  out_.add(std::move(d));
}

Place Conformer::place_of(Node& map, const Raw& among, const RawEntry& entry) {
  const std::string_view group = map.key ? map.key->path : "";
  const std::string dot = group.empty() ? "" : std::string(group) + '.';
  const std::string path = map.path.empty() ? "" : map.path + '.';
  if (const Key* row = find_key(against_.table, dot + entry.key); row && entry.key != "*") {
    return {path + entry.key, entry.name, row};
  }
  if (const Key* row = find_key(against_.table, dot + '*')) {
    table_name(map, entry);
    return {path + entry.key, entry.name, row};
  }
  if (out_.full()) return {};
  Stray stray = stray_key(against_.table, {group, entry, among});
  out_.add(std::move(stray.problem));
  if (stray.meant.empty()) return {};
  return {path + stray.meant, entry.name, find_key(against_.table, dot + stray.meant)};
}

// True when the next entry is the rest of this one's number.
bool Conformer::entry(Node& map, const Raw& among, size_t index) {
  const RawEntry& entry = among.entries[index];
  const bool more = index + 1 < among.entries.size();
  const RawEntry* next = more ? &among.entries[index + 1] : nullptr;
  const bool tail = among.flow && next && next->value.form == Raw::Form::nothing;
  if (against_.table.empty()) {
    const std::string path = map.path.empty() ? entry.key : map.path + '.' + entry.key;
    map.entries.emplace_back(entry.key, value(entry.value, {path, entry.name, nullptr}));
    return false;
  }
  Place place = place_of(map, among, entry);
  if (!place.row) return false;
  const std::string name = last_name(place.path);
  if (against_.document == Document::profile && !place.row->has(flag::profile_ok)) {
    out_.add(complaint(entry.name, "'" + name + "' may not stand in a profile", "",
                       "put it in the specs that use this profile"));
    return false;
  }
  const bool torn = tail && split_number(*place.row, entry.value, {next->begin, next->end});
  Node node;
  node.key = place.row;
  node.path = place.path;
  if (!torn) node = value(entry.value, std::move(place));
  map.entries.emplace_back(name, std::move(node));
  return torn;
}

void Conformer::map(Node& node, const Raw& raw) {
  node.form = Node::Form::map;
  for (size_t i = 0; i < raw.entries.size(); ++i) {
    if (entry(node, raw, i)) ++i;
  }
  if (node.key && node.key->kind == Kind::table) count(node, raw, raw.entries.size());
}

void Conformer::count(const Node& node, const Raw& raw, size_t entries) {
  const Limits& limits = node.key->limits;
  const auto number = static_cast<double>(entries);
  if ((limits.low == 0 && limits.high == 0) || (number >= limits.low && number <= limits.high)) {
    return;
  }
  out_.add(complaint(shown_at(node, raw),
                     "'" + last_name(node.path) + "' has " + std::to_string(entries) +
                         (entries == 1 ? " item" : " items"),
                     expectation(*node.key)));
}

void Conformer::list(Node& node, const Raw& raw) {
  node.form = Node::Form::list;
  bool whole = true;
  for (size_t i = 0; i < raw.items.size(); ++i) {
    const Key* row = node.key ? item_row(node.key->path, i) : item_row("", i);
    const bool beyond =
        node.key && node.key->limits.high > 0 && static_cast<double>(i) >= node.key->limits.high;
    if ((!row && node.key) || beyond) break;  // too many are counted below
    const bool amount = row && has_unit(row->kind) && i + 1 < raw.items.size();
    if (amount &&
        split_number(*row, raw.items[i], {raw.items[i + 1].begin, raw.items[i + 1].end})) {
      whole = false;
      ++i;
      continue;
    }
    const std::string path = node.path + '[' + std::to_string(node.items.size()) + ']';
    node.items.push_back(value(raw.items[i], {path, Span{}, row}));
  }
  if (node.key && whole) count(node, raw, raw.items.size());
}

Node Conformer::value(const Raw& raw, Place place) {
  Node node;
  node.key = place.row;
  node.path = std::move(place.path);
  node.name = std::move(place.name);
  node.where = raw.where;
  node.typed =
      raw.quoted ? raw.text : std::string(source_.text().substr(raw.begin, raw.end - raw.begin));
  if (raw.form == Raw::Form::broken) return node;
  const Kind kind = node.key ? node.key->kind : Kind::text;
  const bool keyed = kind == Kind::group || kind == Kind::table || !node.key;
  if (raw.form == Raw::Form::map && keyed) {
    map(node, raw);
  } else if (raw.form == Raw::Form::list && (kind == Kind::list || !node.key)) {
    list(node, raw);
  } else if (raw.form == Raw::Form::list && node.key && is_range(*node.key, raw)) {
    range(node, raw);
  } else if (raw.form == Raw::Form::scalar && node.key && node.key->has(flag::short_form)) {
    short_form(node, raw);
  } else if (raw.form == Raw::Form::scalar && !(keyed && node.key) && kind != Kind::list) {
    leaf(node, raw);
  } else if (node.key) {
    wrong_form(node, raw);
  }
  if (node.form != Node::Form::leaf) node.typed.clear();
  return node;
}

Node Conformer::root(const Raw& raw) {
  Node node;
  node.where = raw.where;
  const bool wants_list = find_key(against_.table, "[]") != nullptr;
  if (against_.table.empty()) return value(raw, {});
  if (raw.form == Raw::Form::list && wants_list) {
    list(node, raw);
  } else if (raw.form == Raw::Form::map && !wants_list) {
    map(node, raw);
  } else if (raw.form != Raw::Form::broken) {
    out_.add(complaint(raw.where,
                       wants_list ? "the file is not a list" : "the file is not made of keys",
                       wants_list ? "lines that start with '- '" : "lines like 'key: value'"));
  }
  return node;
}

}  // namespace

Node conform(const SourceText& source, const Raw& raw, const Against& against, Complaints& out) {
  return Conformer(source, against, out).root(raw);
}

}  // namespace loamsheet
