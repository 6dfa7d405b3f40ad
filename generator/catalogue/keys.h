// keys: the tables of the catalogue's files.
#pragma once
#include <span>

#include "read/key.h"

namespace loamsheet {

std::span<const Key> source_keys();
std::span<const Key> light_keys();
std::span<const Key> currency_keys();
std::span<const Key> material_keys();
std::span<const Key> mix_keys();
std::span<const Key> animal_keys();
std::span<const Key> group_keys();
std::span<const Key> hazard_keys();
std::span<const Key> plant_keys();
std::span<const Key> crew_keys();

}  // namespace loamsheet
