#include <qpdf/Pl_Flate.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFWriter.hh>

#include "finish/steps.h"

namespace loamsheet {
namespace {

// zlib's level for every stream. It is qpdf's only setting that is not of one writer; it is set
// once, always to the same.
void choose_flate_level() {
  static const bool chosen = (Pl_Flate::setCompressionLevel(6), true);
  (void)chosen;
}

}  // namespace

std::string written(QPDF& pdf, Archive archive) {
  choose_flate_level();
  QPDFWriter writer(pdf);
  writer.setOutputMemory();
  writer.setDeterministicID(true);
  writer.setNewlineBeforeEndstream(true);
  writer.setObjectStreamMode(archive == Archive::plain ? qpdf_o_disable : qpdf_o_generate);
  writer.forcePDFVersion(archive == Archive::plain ? "1.4" : "1.7");
  writer.write();
  const auto buffer = writer.getBufferSharedPointer();
  return {reinterpret_cast<const char*>(buffer->getBuffer()), buffer->getSize()};
}

}  // namespace loamsheet
