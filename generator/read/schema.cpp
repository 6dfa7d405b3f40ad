#include "base/text.h"
#include "read/json_text.h"
#include "read/pattern.h"
#include "read/read.h"

namespace loamsheet {
namespace {

Json of(const Key& key);

std::string name_of(const Key& key) {
  return std::string(key.path.substr(key.path.find_last_of('.') + 1));
}

Json typed(std::string_view type) {
  return Json::object().set("type", Json::text(type));
}

Json pattern(const Key& key) {
  return typed("string").set("pattern", Json::text(pattern_of(key)));
}

Json either(Json a, Json b) {
  return Json::object().set("anyOf", Json::array().add(std::move(a)).add(std::move(b)));
}

// A key that a profile may give, or that only some neighbours ask for, may be absent from the file.
bool always_there(const Key& key) {
  const bool given_elsewhere = key.has(flag::profile_ok) && !key.has(flag::name);
  return key.has(flag::required) && key.when.empty() && !given_elsewhere;
}

// The keys under a path, added to what is already said of them.
Json group(std::string_view path, Json out) {
  Json properties = Json::object(), required = Json::array();
  bool any = false;
  for (const Key* key : keys_under(spec_keys(), path)) {
    properties.set(name_of(*key), of(*key));
    if (always_there(*key)) required.add(Json::text(name_of(*key)));
    any = any || always_there(*key);
  }
  out.set("type", Json::text("object")).set("properties", std::move(properties));
  if (any) out.set("required", std::move(required));
  return out.set("additionalProperties", Json::yes(false));
}

Json list(const Key& key) {
  const std::string path(key.path);
  Json out = typed("array");
  if (const Key* item = find_key(spec_keys(), path + "[]")) {
    out.set("items", of(*item));
  } else {
    Json each = Json::array();
    for (int i = 0; i < static_cast<int>(key.limits.high); ++i) {
      each.add(of(*find_key(spec_keys(), path + '[' + std::to_string(i) + ']')));
    }
    out.set("prefixItems", std::move(each));
  }
  out.set("minItems", Json::number(key.limits.low));
  return out.set("maxItems", Json::number(key.limits.high));
}

Json table(const Key& key) {
  const Key id{.path = "", .kind = Kind::id};
  const Key* value = find_key(spec_keys(), std::string(key.path) + ".*");
  return typed("object").set("propertyNames", pattern(id)).set("additionalProperties", of(*value));
}

Json choice(const Key& key) {
  Json values = Json::array();
  for (const auto& c : split(key.choices, '|')) values.add(Json::text(c));
  if (key.has(flag::unknown_ok)) values.add(Json::text("?"));
  return Json::object().set("enum", std::move(values));
}

Json yes_no() {
  Json values = Json::array();
  values.add(Json::text("yes")).add(Json::text("no")).add(Json::yes(true)).add(Json::yes(false));
  return Json::object().set("enum", std::move(values));
}

Json whole_number(const Key& key) {
  return typed("integer")
      .set("minimum", Json::number(key.limits.low))
      .set("maximum", Json::number(key.limits.high));
}

Json line_of_text(const Key& key) {
  return typed("string")
      .set("minLength", Json::number(1))
      .set("maxLength", Json::number(key.limits.high > 0 ? key.limits.high : 200));
}

Json amount(const Key& key) {
  if (!key.has(flag::range_ok)) return pattern(key);
  Key end = key;
  end.flags = flag::none;
  Json ends = typed("array");
  ends.set("items", pattern(end)).set("minItems", Json::number(2)).set("maxItems", Json::number(2));
  return either(pattern(key), std::move(ends));
}

Json shape_of(const Key& key) {
  switch (key.kind) {
    case Kind::group: {
      if (!key.has(flag::short_form)) return group(key.path, Json::object());
      return either(group(key.path, Json::object()),
                    typed("string").set("pattern", Json::text("^[0-9]+ [a-z0-9]+(-[a-z0-9]+)*$")));
    }
    case Kind::list:
      return list(key);
    case Kind::table:
      return table(key);
    case Kind::text:
      return line_of_text(key);
    case Kind::choice:
      return choice(key);
    case Kind::yes_no:
      return yes_no();
    case Kind::integer:
      return whole_number(key);
    case Kind::number:
    case Kind::uv_index:
      return either(typed("number"), pattern(key));
    case Kind::reference:
      return either(pattern(key), typed("integer"));
    default:
      return has_unit(key.kind) ? amount(key) : pattern(key);
  }
}

std::string description(const Key& key) {
  std::string words(key.help);
  if (!key.fallback.empty()) words += " Taken if absent: " + std::string(key.fallback) + '.';
  if (!key.unknown.empty()) words += " '?' stands for " + std::string(key.unknown) + '.';
  return words;
}

Json of(const Key& key) {
  Json out = shape_of(key);
  out.set("description", Json::text(description(key)));
  if (!key.example.empty() && key.kind > Kind::table) {
    out.set("examples", Json::array().add(Json::text(key.example)));
  }
  return out;
}

}  // namespace

std::string spec_schema() {
  Json root = Json::object();
  root.set("$schema", Json::text("https://json-schema.org/draft/2020-12/schema"));
  root.set("title", Json::text("A loamsheet spec"));
  return group("", std::move(root)).written() + '\n';
}

}  // namespace loamsheet
