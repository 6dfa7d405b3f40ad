#include "catalogue/soft_weights.h"

#include <cmath>

#include "catalogue/file.h"

namespace loamsheet {
namespace {

using enum Kind;
using flag::required;

constexpr const char* file = "templates/placement.yaml";

constexpr Key rows[] = {
    {.path = "soft", .kind = group, .flags = required},
    {.path = "soft.light", .kind = group, .flags = required},
    {.path = "soft.light.weight", .kind = number, .limits = {0, 1}, .flags = required},
    {.path = "soft.light.why", .kind = text, .flags = required},
    {.path = "soft.humidity", .kind = group, .flags = required},
    {.path = "soft.humidity.weight", .kind = number, .limits = {0, 1}, .flags = required},
    {.path = "soft.humidity.why", .kind = text, .flags = required},
    {.path = "soft.habit", .kind = group, .flags = required},
    {.path = "soft.habit.weight", .kind = number, .limits = {0, 1}, .flags = required},
    {.path = "soft.habit.why", .kind = text, .flags = required},
    {.path = "soft.headroom", .kind = group, .flags = required},
    {.path = "soft.headroom.weight", .kind = number, .limits = {0, 1}, .flags = required},
    {.path = "soft.headroom.why", .kind = text, .flags = required},
};

}  // namespace

Outcome<SoftWeights> read_soft_weights(World& world) {
  Sink sink;
  const auto root = data_tree(world, file, rows, sink);
  if (!root) return {std::nullopt, sink.take()};
  const auto weight = [&](const char* rule) {
    return root->number(std::string("soft.") + rule + ".weight").value_or(0);
  };
  const SoftWeights soft{weight("light"), weight("humidity"), weight("habit"), weight("headroom")};
  const double sum = soft.light + soft.humidity + soft.habit + soft.headroom;
  if (std::abs(sum - 1) > 1e-9) {
    return failure<SoftWeights>({.where = root->find("soft")->where,
                                 .message = "the weights of the soft rules do not sum to 1",
                                 .expected = "weights from 0 to 1 with a sum of 1"});
  }
  return {soft, sink.take()};
}

}  // namespace loamsheet
