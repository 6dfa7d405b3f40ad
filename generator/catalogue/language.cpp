#include "catalogue/language.h"

#include <algorithm>
#include <set>

#include "base/text.h"
#include "catalogue/amounts.h"
#include "catalogue/file.h"
#include "read/compiled.h"
#include "read/language.h"

namespace loamsheet {
namespace {

constexpr std::string_view ending = ".yaml";

std::string folder_of(std::string_view language) {
  return "templates/" + std::string(language) + '/';
}

std::string_view base_name(std::string_view path) {
  return path.substr(path.rfind('/') + 1);
}

Diagnostic fault(Span where, std::string message) {
  Diagnostic d;
  d.where = std::move(where);
  d.message = std::move(message);
  d.fault = Fault::file;
  return d;
}

// A name belongs in the file that it begins with: "layers." in layers.yaml.
void check_stem(const FlatFile& file, Sink& sink) {
  const std::string_view name = base_name(file.file->name());
  const std::string_view stem = name.substr(0, name.size() - ending.size() + 1);
  for (const FlatLine& line : file.lines) {
    if (line.name.starts_with(stem)) continue;
    Diagnostic d =
        fault(line.where(), "'" + std::string(line.name) + "' does not belong in this file");
    d.expected = "a name that starts with '" + std::string(stem) + "'";
    sink.add(std::move(d));
  }
}

std::vector<FlatFile> files_in(World& world, const std::string& language, Sink& sink) {
  std::vector<FlatFile> files;
  const std::string folder = folder_of(language);
  for (const std::string& name : world.list(world.data("templates/" + language))) {
    if (!name.ends_with(ending)) continue;
    auto file = read_flat(world, folder + name, sink);
    if (!file) continue;
    check_stem(*file, sink);
    files.push_back(std::move(*file));
  }
  return files;
}

const FlatFile* file_like(const std::vector<FlatFile>& files, std::string_view path) {
  const auto found = std::find_if(files.begin(), files.end(), [&](const FlatFile& file) {
    return base_name(file.file->name()) == base_name(path);
  });
  return found == files.end() ? nullptr : &*found;
}

std::string_view name_of(std::string_view slot) {
  return slot.substr(0, slot.find(':'));
}

std::vector<std::string> slot_names(std::string_view sentence) {
  std::set<std::string> names;
  for (const std::string_view slot : slots_in(sentence)) names.emplace(name_of(slot));
  return {names.begin(), names.end()};
}

bool has(const std::vector<std::string>& names, const std::string& name) {
  return std::find(names.begin(), names.end(), name) != names.end();
}

// Which parts of a date a language says, and in which order, is its own.
const std::vector<std::string>& parts_of_date() {
  static const std::vector<std::string> parts{"day",         "iso",     "month",
                                              "short-month", "weekday", "year"};
  return parts;
}

bool is_date(std::string_view name) {
  return name.starts_with("units.") && name.find(".date") != std::string_view::npos;
}

// Lines of these names are looked up by what the catalogue and the forms of slots say, so a
// language may have more of them than English.
bool may_be_more(std::string_view name) {
  return name.starts_with("units.") || name.starts_with("material.");
}

// One file of a language beside the one it has to be like.
class Comparison {
 public:
  Comparison(const FlatFile& have, const FlatFile& want, Sink& sink)
      : have_(have), want_(want), sink_(sink) {}

  void sentences() {
    for (const FlatLine& line : want_.lines) {
      const FlatLine* found = have_.find(line.name);
      if (!found) {
        missing(line);
      } else if (found->value != line.value) {
        slots(*found, line);
        amounts(*found, line);
      }
    }
  }

  void nothing_more() {
    for (const FlatLine& line : have_.lines) {
      if (want_.find(line.name) || may_be_more(line.name)) continue;
      Diagnostic d = fault(line.where(), "there is no sentence '" + std::string(line.name) +
                                             "' in " + want_.file->name());
      if (const auto near = closest(line.name, names())) d.hint = "did you mean '" + *near + "'?";
      sink_.add(std::move(d));
    }
  }

 private:
  void missing(const FlatLine& line) {
    Diagnostic d = fault(whole_file(have_.file->name()), "has no '" + std::string(line.name) + "'");
    d.expected = "a line like " + std::string(line.name) + ": \"" + std::string(line.value) + '"';
    sink_.add(std::move(d));
  }

  void slots(const FlatLine& have, const FlatLine& want) {
    const auto said = slot_names(have.value), wanted = slot_names(want.value);
    const bool date = is_date(want.name);
    const auto& known = date ? parts_of_date() : wanted;
    const std::string expected = known.empty() ? "no slots" : '{' + join(known, "}, {") + '}';
    for (const std::string& slot : said) {
      if (has(known, slot)) continue;
      Diagnostic d = fault(have.where(),
                           "'" + std::string(have.name) + "' has an unknown slot {" + slot + '}');
      d.expected = expected;
      if (const auto near = closest(slot, known)) d.hint = "did you mean {" + *near + "}?";
      sink_.add(std::move(d));
    }
    for (const std::string& slot : wanted) {
      if (date || has(said, slot)) continue;
      Diagnostic d = fault(have.where(), "'" + std::string(have.name) + "' has no {" + slot + '}');
      d.expected = expected;
      sink_.add(std::move(d));
    }
  }

  void amounts(const FlatLine& have, const FlatLine& want) {
    if (!want.name.starts_with("units.") || !parse_steps(want.value)) return;
    if (parse_steps(have.value)) return;
    Diagnostic d = fault(have.where(), "'" + std::string(have.name) + "' is not steps of a unit");
    d.expected = "a line like \"" + std::string(want.value) + '"';
    sink_.add(std::move(d));
  }

  std::vector<std::string> names() const {
    std::vector<std::string> names;
    for (const FlatLine& line : want_.lines) names.emplace_back(line.name);
    return names;
  }

  const FlatFile& have_;
  const FlatFile& want_;
  Sink& sink_;
};

void missing_file(const std::string& name, Sink& sink) {
  Diagnostic d = fault(whole_file(name), "cannot be read");
  d.hint = "the installation is not complete; it should hold " + name;
  sink.add(std::move(d));
}

// English may be worded anew and have more files and sentences than when the program was built.
void compare_with_built(const CompiledData& data, const std::vector<FlatFile>& english,
                        Sink& sink) {
  for (const std::string& name : compiled_names(data)) {
    if (!name.starts_with(folder_of(reference_language))) continue;
    const FlatFile* have = file_like(english, name);
    if (!have) missing_file(name, sink);
    if (!have || !have->file->problems().empty()) continue;
    auto built = compiled_file(data, name);
    if (!built || built->bytes() == have->file->bytes()) continue;
    Comparison(*have, flat_file(std::move(built), sink), sink).sentences();
  }
}

// A slot may name a form that the language's units have, or that English uses in this sentence.
void check_forms(const std::vector<FlatFile>& files, Sink& sink) {
  const FlatFile* units = file_like(files, "units.yaml");
  if (!units) return;
  for (const FlatFile& file : files) {
    for (const FlatLine& line : file.lines) {
      for (const std::string_view slot : slots_in(line.value)) {
        const size_t colon = slot.find(':');
        if (colon == std::string_view::npos) continue;
        const std::string tail = '-' + std::string(slot.substr(colon + 1));
        const bool known =
            std::any_of(units->lines.begin(), units->lines.end(),
                        [&](const FlatLine& unit) { return unit.name.ends_with(tail); });
        if (known) continue;
        sink.add(fault(line.where(), "'" + std::string(line.name) + "' asks for {" +
                                         std::string(slot) + "}, a form that units.yaml lacks"));
      }
    }
  }
}

void compare(const std::string& language, const std::vector<FlatFile>& have,
             const std::vector<FlatFile>& english, Sink& sink) {
  for (const FlatFile& want : english) {
    const FlatFile* found = file_like(have, want.file->name());
    if (!found) {
      missing_file(folder_of(language) + std::string(base_name(want.file->name())), sink);
    } else if (found->file->problems().empty()) {
      Comparison comparison(*found, want, sink);
      comparison.sentences();
      comparison.nothing_more();
    }
  }
  for (const FlatFile& file : have) {
    if (file_like(english, file.file->name())) continue;
    sink.add(fault(whole_file(file.file->name()), "English has no file of this name"));
  }
}

}  // namespace

std::vector<std::string_view> slots_in(std::string_view sentence) {
  std::vector<std::string_view> slots;
  while (true) {
    const size_t open = sentence.find('{'), close = sentence.find('}', open);
    if (open == std::string_view::npos || close == std::string_view::npos) return slots;
    slots.push_back(sentence.substr(open + 1, close - open - 1));
    sentence.remove_prefix(close + 1);
  }
}

std::vector<FlatFile> read_language(World& world, const std::string& language, Sink& sink) {
  auto files = files_in(world, language, sink);
  if (files.empty()) {
    Diagnostic d = fault(whole_file("templates/" + language),
                         "there are no words for language '" + language + "'");
    d.expected = "a folder of that name with the templates";
    sink.add(std::move(d));
  } else if (language == reference_language) {
    compare_with_built(world.compiled(), files, sink);
  } else {
    compare(language, files, read_language(world, std::string(reference_language), sink), sink);
    check_forms(files, sink);
  }
  return files;
}

}  // namespace loamsheet
