// finish: painted pages + drawn figures -> the sheet's PDF. The only user of qpdf. Puts figures in
// as form XObjects, writes structure tree, outline, metadata, output intent, embedded files and
// id, and repairs what libharu and Cairo leave short of PDF/A.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/date.h"
#include "base/diagnostic.h"
#include "figure/figure.h"
#include "layout/pages.h"

namespace loamsheet {

enum class Archive { full, plain };  // PDF/A-3b with files embedded, PDF/A-1b without

// The description of the attachment that is the spec a sheet was made from: it is embedded as the
// document's source, and reopening looks for it.
inline constexpr std::string_view spec_description = "spec";

struct Attachment {
  std::string name, media_type, description, bytes;
};

struct FinishInput {
  std::string painted;  // libharu's bytes
  std::string drawn;    // Cairo's bytes: one page a figure; empty when none
  const Pages& pages;
  const Figures& figures;
  std::vector<Attachment> attachments;
  std::string colour_profile;  // bytes of an sRGB ICC profile
  Archive archive = Archive::full;
  long long stamp = 0;   // seconds since 1970, UTC: creation and modification
  std::string producer;  // "loamsheet 0.1.0"
};

Outcome<std::string> finish(const FinishInput&);

// The attachment of a finished sheet whose description says it is the spec, or an error.
Outcome<Attachment> embedded_spec(const std::string& pdf);

}  // namespace loamsheet
