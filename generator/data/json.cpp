#include "data/json.h"

#include <algorithm>

namespace loamsheet {
namespace {

// A line is not to be longer with what stands before it on the page.
constexpr size_t longest_array = 80;

// An array of numbers as one line; nothing for anything else, or when it is too long for one.
std::optional<std::string> on_one_line(const Json& j) {
  const auto is_number = [](const Json& part) { return part.is_number(); };
  if (!j.is_array() || !std::all_of(j.begin(), j.end(), is_number)) return std::nullopt;
  std::string out;
  for (const Json& part : j) out += (out.empty() ? "" : ", ") + part.dump();
  return out.size() > longest_array ? std::nullopt : std::optional('[' + out + ']');
}

void write(const Json& j, const std::string& indent, std::string& out) {
  if (const auto line = on_one_line(j)) {
    out += *line;
    return;
  }
  if (!j.is_structured() || j.empty()) {
    out += j.dump();
    return;
  }
  const std::string deeper = indent + "  ";
  out += j.is_array() ? '[' : '{';
  const char* between = "\n";
  for (const auto& [key, value] : j.items()) {
    out += between + deeper + (j.is_array() ? "" : Json(key).dump() + ": ");
    write(value, deeper, out);
    between = ",\n";
  }
  out += '\n' + indent + (j.is_array() ? ']' : '}');
}

}  // namespace

std::string document(const Json& j) {
  std::string out;
  write(j, "", out);
  return out + '\n';
}

}  // namespace loamsheet
