#include <qpdf/QPDF.hh>
#include <qpdf/QPDFEFStreamObjectHelper.hh>
#include <qpdf/QPDFEmbeddedFileDocumentHelper.hh>
#include <qpdf/QPDFFileSpecObjectHelper.hh>
#include <set>

#include "finish/steps.h"
#include "finish/xmp.h"

namespace loamsheet {
namespace {

using Object = QPDFObjectHandle;

// How a file bears on the document (ISO 19005-3, annex E).
std::string relationship(const Attachment& attachment) {
  if (attachment.description == spec_description) return "/Source";
  const bool data =
      attachment.media_type == "application/json" || attachment.media_type == "text/csv";
  return data ? "/Data" : "/Supplement";
}

Object file_specification(QPDF& pdf, const Attachment& attachment, const std::string& time) {
  auto stream = QPDFEFStreamObjectHelper::createEFStream(pdf, attachment.bytes);
  stream.setSubtype(attachment.media_type).setCreationDate(time).setModDate(time);
  auto spec = QPDFFileSpecObjectHelper::createFileSpec(pdf, attachment.name, stream);
  spec.setDescription(attachment.description);
  Object object = spec.getObjectHandle();
  object.replaceKey("/AFRelationship", Object::newName(relationship(attachment)));
  return object;
}

}  // namespace

void embed_files(QPDF& pdf, const FinishInput& in) {
  if (in.attachments.empty()) return;
  QPDFEmbeddedFileDocumentHelper files(pdf);
  Object associated = Object::newArray();
  std::set<std::string> names;
  for (const auto& attachment : in.attachments) {
    if (!names.insert(attachment.name).second) {
      throw Mismatch("two embedded files are called " + attachment.name);
    }
    Object spec = file_specification(pdf, attachment, pdf_time(in.stamp));
    files.replaceEmbeddedFile(attachment.name, QPDFFileSpecObjectHelper(spec));
    associated.appendItem(spec);
  }
  pdf.getRoot().replaceKey("/AF", associated);
}

}  // namespace loamsheet
