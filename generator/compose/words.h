// words: small pieces of text that several parts of the sheet share.
#pragma once
#include <string>
#include <vector>

#include "base/capital.h"
#include "base/finding.h"
#include "catalogue/wording.h"
#include "check/build.h"
#include "compose/sheet.h"

namespace loamsheet {

Words plain(std::string text);
Words bold(std::string text);

// The name on paper of a material, a mix ("mix-woodland") or an outlet; a shop's own material
// goes by its id with blanks for hyphens.
std::string material_name(const Wording&, const std::string& id);

// The numbers of a sentence with those names for the materials, whose slots end in "-material".
Args with_materials_named(Args, const Wording&);

// What a key of the spec that may be unknown is called on paper; otherwise the key itself.
std::string key_name(const Wording&, const std::string& key);

// "a, b and c".
std::string listed(const Wording&, const std::vector<std::string>& items);

}  // namespace loamsheet
