#include "job/stock.h"

#include <filesystem>

namespace loamsheet {

std::string path_beside(const Spec& spec, const std::string& name) {
  return (std::filesystem::path(spec.file).parent_path() / name).string();
}

Outcome<std::optional<Stock>> named_stock(World& world, const Spec& spec) {
  const auto name = spec.root.text("stock");
  if (!name) return {std::optional<Stock>{}, {}};
  auto stock = read_stock(world, path_beside(spec, *name), spec.root.find("stock")->where);
  if (!stock) return {std::nullopt, std::move(stock.messages)};
  return {std::move(stock.value), std::move(stock.messages)};
}

}  // namespace loamsheet
