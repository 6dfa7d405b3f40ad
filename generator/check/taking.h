// taking: values of a build taken from the keys of a node.
#pragma once
#include <optional>
#include <string>

#include "base/units.h"
#include "check/position.h"
#include "kinds/one_of.h"
#include "read/node.h"

namespace loamsheet {

inline void take(const Node& n, std::string_view key, double& value) {
  if (const auto stated = n.number(key)) value = *stated;
}

inline void take(const Node& n, std::string_view key, bool& value) {
  if (const auto stated = n.yes(key)) value = *stated;
}

inline void take(const Node& n, std::string_view key, std::string& value) {
  if (const auto stated = n.text(key)) value = *stated;
}

inline void take(const Node& n, std::string_view key, Position& value) {
  value = position_of(n, key);
}

template <class Unit>
void take(const Node& n, std::string_view key, Amount<Unit>& value) {
  if (const auto stated = n.number(key)) value = {*stated};
}

template <class Row>
void take(const Node& n, std::string_view key, OneOf<Row>& value) {
  if (const auto stated = n.text(key)) value = *stated;
}

// What need not be stated.
template <class T>
void take(const Node& n, std::string_view key, std::optional<T>& value) {
  if (!n.has(key)) return;
  value.emplace();
  take(n, key, *value);
}

// Every value that a thing has from a key of the same node.
template <class Thing>
Thing taken_from(const Node& n) {
  Thing thing;
  thing.keys([&](std::string_view key, auto& value) { take(n, key, value); });
  thing.where = n.where;
  return thing;
}

}  // namespace loamsheet
