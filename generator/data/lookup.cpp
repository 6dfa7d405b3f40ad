#include "data/lookup.h"

#include <algorithm>
#include <array>
#include <set>

#include "base/text.h"
#include "data/lookup_print.h"
#include "data/suiting.h"

namespace loamsheet {
namespace {

const Shelf& shelf_of(const Catalogue& catalogue, const std::string& name) {
  if (name == "plants") return catalogue.plants;
  if (name == "animals") return catalogue.animals;
  return name == "crew" ? catalogue.crew : catalogue.materials;
}

// The fault of an id or value that nothing has.
Diagnostic unknown(const std::string& what, const std::string& typed,
                   const std::vector<std::string>& known) {
  Diagnostic d;
  d.message = "unknown " + what + " '" + typed + "'";
  if (const auto near = closest(typed, known)) {
    d.hint = "did you mean '" + *near + "'?";
  } else if (known.size() <= 12) {
    d.expected = "one of " + join(known, ", ");
  }
  return d;
}

// The present id of what was typed; a former name is taken with a warning.
std::optional<std::string> present_id(const Catalogue& catalogue, const std::string& shelf,
                                      const std::string& typed, Sink& sink) {
  const Shelf& all = shelf_of(catalogue, shelf);
  if (all.has(typed)) return typed;
  const auto now = all.renamed(typed);
  if (!now) {
    sink.add(unknown("id", typed, all.ids()));
    return std::nullopt;
  }
  sink.add({.severity = Severity::warning,
            .message = "'" + typed + "' is now called '" + *now + "'",
            .hint = "write '" + *now + "'"});
  return now;
}

class Looking {
 public:
  Looking(const Catalogue& catalogue, const Wording& words, const LookupAsk& ask)
      : catalogue_(catalogue), words_(words), ask_(ask) {}

  Outcome<std::string> answer() {
    judge_by_animal();
    const auto entries = ask_.id.empty() ? several() : one();
    if (sink_.failed()) return {std::nullopt, sink_.take()};
    return {print(entries), sink_.take()};
  }

  // What stands on the shelf; reference rows count, too.
  std::vector<Looked> all() { return entries_of(shelf_of(catalogue_, ask_.shelf).ids()); }
  Sink& sink() { return sink_; }

 private:
  std::vector<Looked> one() {
    const auto id = present_id(catalogue_, ask_.shelf, ask_.id, sink_);
    if (!id) return {};
    return entries_of({*id});
  }

  std::vector<Looked> several() {
    const auto all = entries_of(shelf_of(catalogue_, ask_.shelf).ids());
    std::vector<Looked> kept;
    hold_values(all);
    for (const Looked& entry : all) {
      const bool asked_for = !entry.reference && wanted(entry) && named(entry);
      if (asked_for && suits_at_all(entry) && in_stock(entry)) kept.push_back(entry);
    }
    return kept;
  }

  std::vector<Looked> entries_of(const std::vector<std::string>& ids) {
    std::vector<Looked> entries;
    for (const auto& id : ids) {
      if (auto entry = entry_of(id)) entries.push_back(std::move(*entry));
    }
    return entries;
  }

  std::optional<Looked> entry_of(const std::string& id) {
    if (ask_.shelf == "plants") return looked_plant(id);
    if (ask_.shelf == "animals") return looked(read_animal(catalogue_, id));
    if (ask_.shelf == "crew") return looked(read_crew(catalogue_, id));
    return looked(read_material(catalogue_, id));
  }

  template <class T>
  std::optional<Looked> looked(Outcome<T>&& read) {
    const auto entry = taken(std::move(read), sink_);
    if (!entry) return std::nullopt;
    return stated(*entry, words_);
  }

  std::optional<Looked> looked_plant(const std::string& id) {
    const auto plant = taken(read_plant(catalogue_, id), sink_);
    if (!plant) return std::nullopt;
    Looked entry = stated(*plant, words_);
    if (judge_) entry.facts.push_back(suits(*judge_, *plant, words_, !ask_.id.empty()));
    return entry;
  }

  // A filter on a value in words: the fact that it looks at and what the fact must say.
  struct Value {
    const char* option;
    std::string key, typed;
  };
  std::vector<Value> values() const {
    const std::string kind = ask_.shelf == "animals"     ? "build_kind"
                             : ask_.shelf == "materials" ? "role"
                                                         : "group";
    std::vector<Value> all{{"light", "light", ask_.filter.light},
                           {"habit", "habit", ask_.filter.habit},
                           {"damp", "moisture", ask_.filter.damp},
                           {"kind", kind, ask_.filter.kind}};
    std::erase_if(all, [](const Value& v) { return v.typed.empty(); });
    return all;
  }

  // A value that no entry has is a slip, not a question with an empty answer.
  void hold_values(const std::vector<Looked>& all) {
    for (const Value& value : values()) {
      std::set<std::string> known;
      for (const Looked& entry : all) {
        if (const Stated* fact = entry.find(value.key)) known.insert(fact->value);
      }
      if (known.contains(value.typed)) continue;
      sink_.add(unknown(value.option, value.typed, {known.begin(), known.end()}));
    }
  }

  bool wanted(const Looked& entry) const {
    for (const Value& value : values()) {
      const Stated* fact = entry.find(value.key);
      if (!fact || fact->value != value.typed) return false;
    }
    const Stated* mounts = entry.find("mountable");
    if (ask_.filter.mountable && !(mounts && mounts->value == true)) return false;
    return low_enough(entry);
  }

  bool low_enough(const Looked& entry) const {
    if (!ask_.filter.max_height) return true;
    const Stated* height = entry.find("height_mm");
    if (!height) return false;
    const Json& tallest = height->value.is_array() ? height->value.back() : height->value;
    return tallest.get<double>() <= ask_.filter.max_height->v;
  }

  bool named(const Looked& entry) const {
    const std::string wanted = small(ask_.filter.name);
    return small(entry.id).find(wanted) != std::string::npos ||
           small(entry.name).find(wanted) != std::string::npos;
  }

  static std::string small(std::string text) {
    for (char& c : text) c = c >= 'A' && c <= 'Z' ? static_cast<char>(c + ('a' - 'A')) : c;
    return text;
  }

  // The build that plants are held against; nothing when no animal was named.
  void judge_by_animal() {
    if (ask_.filter.safe_for.empty()) return;
    const auto id = present_id(catalogue_, "animals", ask_.filter.safe_for, sink_);
    if (id) judge_ = taken(build_around(catalogue_, *id), sink_);
  }

  static bool suits_at_all(const Looked& entry) {
    const Stated* verdict = entry.find("suits");
    return !verdict || verdict->value != "no";
  }

  bool in_stock(const Looked& entry) const {
    if (!ask_.filter.stock) return true;
    const auto& lines = ask_.filter.stock->lines;
    return std::any_of(lines.begin(), lines.end(), [&](const StockLine& line) {
      return line.item == entry.id && line.on_hand > 0;
    });
  }

  std::string print(const std::vector<Looked>& entries) const {
    const Printed p{catalogue_, words_, ask_};
    if (ask_.origins) return print_origins(p, entries);
    if (ask_.format == "json") return print_json(p, entries);
    if (ask_.format == "csv") return print_csv(p, entries);
    return ask_.id.empty() ? print_table(p, entries) : print_entry(p, entries.front());
  }

  const Catalogue& catalogue_;
  const Wording& words_;
  const LookupAsk& ask_;
  std::optional<Build> judge_;
  Sink sink_;
};

// Filters ask about plants alone, but for --kind, which plants do not have.
std::vector<Diagnostic> misplaced(const LookupAsk& ask) {
  const LookupFilter& f = ask.filter;
  const bool plants = ask.shelf == "plants";
  const bool about_plants = !f.light.empty() || !f.habit.empty() || !f.damp.empty() ||
                            f.mountable || f.max_height || !f.safe_for.empty();
  if (!plants && about_plants) {
    return {{.message = "--light, --habit, --damp, --mountable, --max-height and --safe-for ask "
                        "about plants",
             .hint = "leave them out, or write: lookup plants"}};
  }
  if (f.stock && ask.shelf == "animals") {
    return {{.message = "--in-stock asks about plants, crew and materials"}};
  }
  if (plants && !f.kind.empty()) {
    return {
        {.message = "--kind asks about animals, crew and materials", .hint = "of plants: --habit"}};
  }
  return {};
}

// The origins of every fact, shelf by shelf and together.
Outcome<std::string> origins_of_all(const Catalogue& catalogue, const Wording& words,
                                    const LookupAsk& ask) {
  Sink sink;
  std::vector<ShelfLooked> shelves;
  std::vector<Looked> together;
  for (const std::string& name : shelf_names()) {
    LookupAsk of_shelf = ask;
    of_shelf.shelf = name;
    Looking looking(catalogue, words, of_shelf);
    shelves.emplace_back(name, looking.all());
    sink.add(looking.sink().take());
    const auto& entries = shelves.back().second;
    together.insert(together.end(), entries.begin(), entries.end());
  }
  shelves.emplace_back(words.say("lookup.all"), std::move(together));
  if (sink.failed()) return {std::nullopt, sink.take()};
  return {print_origins({catalogue, words, ask}, shelves), sink.take()};
}

}  // namespace

const std::vector<std::string>& shelf_names() {
  static const std::vector<std::string> names{"plants", "animals", "crew", "materials"};
  return names;
}

Outcome<std::string> look_up(const Catalogue& catalogue, const Wording& words,
                             const LookupAsk& ask) {
  if (ask.shelf.empty() && ask.origins) return origins_of_all(catalogue, words, ask);
  if (ask.shelf.empty()) {
    return failure<std::string>({.message = "nothing is said of what to look up",
                                 .expected = "one of " + join(shelf_names(), ", ")});
  }
  auto slips = misplaced(ask);
  if (!slips.empty()) return {std::nullopt, std::move(slips)};
  return Looking(catalogue, words, ask).answer();
}

}  // namespace loamsheet
