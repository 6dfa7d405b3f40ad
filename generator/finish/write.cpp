#include <qpdf/Pl_Flate.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFWriter.hh>

#include "finish/steps.h"

namespace loamsheet {
// zlib's level for every stream: measured on 8 pages, level 6 takes half as long again as level 2
// for files a tenth smaller. It is qpdf's only setting that is not of one writer; it is set once,
// always to the same.
void choose_flate_level() {
  static const bool chosen = (Pl_Flate::setCompressionLevel(2), true);
  (void)chosen;
}

std::string written(QPDF& pdf, Archive archive) {
  QPDFWriter writer(pdf);
  writer.setOutputMemory();
  writer.setDeterministicID(true);
  writer.setNewlineBeforeEndstream(true);
  writer.setObjectStreamMode(qpdf_o_disable);  // PDF/A-1 forbids them, and they cost a third more
  writer.forcePDFVersion(archive == Archive::plain ? "1.4" : "1.7");
  writer.write();
  const auto buffer = writer.getBufferSharedPointer();
  return {reinterpret_cast<const char*>(buffer->getBuffer()), buffer->getSize()};
}

}  // namespace loamsheet
