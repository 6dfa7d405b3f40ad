#include <qpdf/QPDF.hh>
#include <qpdf/QPDFEmbeddedFileDocumentHelper.hh>

#include "finish/finish.h"

namespace loamsheet {
namespace {

Outcome<Attachment> refused(std::string message, std::string expected) {
  Diagnostic d;
  d.message = std::move(message);
  d.expected = std::move(expected);
  d.fault = Fault::file;
  return failure<Attachment>(std::move(d));
}

Attachment read_out(QPDFFileSpecObjectHelper& file) {
  auto stream = file.getEmbeddedFileStream();
  const auto data = stream.getStreamData(qpdf_dl_generalized);
  return {file.getFilename(),
          QPDFEFStreamObjectHelper(stream).getSubtype(),
          file.getDescription(),
          {reinterpret_cast<const char*>(data->getBuffer()), data->getSize()}};
}

bool is_spec(QPDFFileSpecObjectHelper& file) {
  return file.getDescription() == spec_description &&
         file.getObjectHandle().getKey("/AFRelationship").isNameAndEquals("/Source");
}

Outcome<Attachment> find_spec(QPDF& pdf) {
  for (const auto& [name, file] : QPDFEmbeddedFileDocumentHelper(pdf).getEmbeddedFiles()) {
    if (is_spec(*file)) return {read_out(*file), {}};
  }
  return refused("no spec is embedded in this PDF",
                 "a sheet made by loamsheet with its files embedded (not with --archive plain)");
}

}  // namespace

Outcome<Attachment> embedded_spec(const std::string& bytes) {
  try {
    QPDF pdf;
    pdf.setSuppressWarnings(true);
    pdf.processMemoryFile("sheet", bytes.data(), bytes.size());
    return find_spec(pdf);
  } catch (const QPDFExc& e) {
    if (e.getErrorCode() == qpdf_e_password) {
      return refused("this PDF is locked with a password", "a sheet as loamsheet wrote it");
    }
    return refused("this is not a PDF, or it is damaged", "a sheet made by loamsheet");
  } catch (const std::exception&) {
    return refused("this PDF cannot be read", "a sheet made by loamsheet");
  }
}

}  // namespace loamsheet
