#include <qpdf/QPDFEmbeddedFileDocumentHelper.hh>
#include <qpdf/QPDFWriter.hh>

#include "sheet.h"

namespace loamsheet {
namespace {

std::string refusal(const std::string& bytes) {
  const auto spec = embedded_spec(bytes);
  REQUIRE(!spec);
  REQUIRE(spec.messages.size() == 1);
  CHECK(spec.messages[0].fault == Fault::file);
  return spec.messages[0].message;
}

std::string locked(const std::string& bytes) {
  Opened sheet(bytes);
  QPDFWriter writer(sheet.pdf);
  writer.setOutputMemory();
  writer.setR6EncryptionParameters("secret", "owner", true, true, true, true, true, true,
                                   qpdf_r3p_full, true);
  writer.write();
  const auto buffer = writer.getBufferSharedPointer();
  return {reinterpret_cast<const char*>(buffer->getBuffer()), buffer->getSize()};
}

}  // namespace

TEST_CASE("the spec comes out of a sheet as it went in") {
  const auto spec = embedded_spec(finished(Archive::full));
  REQUIRE(spec);
  CHECK(spec.value->name == "fern-ravine.yaml");
  CHECK(spec.value->media_type == "application/yaml");
  CHECK(spec.value->bytes == "build:\n  title: Fern ravine\n");
}

TEST_CASE("embedded files are listed with their part in the document") {
  Opened sheet(Archive::full);
  Object associated = sheet.pdf.getRoot().getKey("/AF");
  REQUIRE(associated.getArrayNItems() == 2);
  CHECK(associated.getArrayItem(0).getKey("/AFRelationship").getName() == "/Source");
  CHECK(associated.getArrayItem(1).getKey("/AFRelationship").getName() == "/Data");
  Object stream = associated.getArrayItem(1).getKey("/EF").getKey("/UF");
  CHECK(stream.getDict().getKey("/Subtype").getName() == "/text/csv");
  Object params = stream.getDict().getKey("/Params");
  CHECK(params.getKey("/Size").getIntValue() == 10);
  CHECK(params.getKey("/ModDate").getStringValue() == "D:20260307151005Z");
}

TEST_CASE("the plain archive embeds nothing") {
  const std::string bytes = finished(Archive::plain);
  Opened sheet(bytes);
  CHECK(!QPDFEmbeddedFileDocumentHelper(sheet.pdf).hasEmbeddedFiles());
  CHECK(!sheet.pdf.getRoot().hasKey("/AF"));
  CHECK(refusal(bytes) == "no spec is embedded in this PDF");
}

TEST_CASE("a file that only looks like the spec is not taken for it") {
  Parts parts;
  parts.attachments = {{"spec", "application/yaml", "profile", "a: 1\n"}};
  CHECK(refusal(finished(parts)) == "no spec is embedded in this PDF");
}

TEST_CASE("what is no sheet is refused in a sentence") {
  CHECK(refusal("") == "this is not a PDF, or it is damaged");
  CHECK(refusal("build:\n  title: x\n") == "this is not a PDF, or it is damaged");
  CHECK(refusal("%PDF-1.7\n%%EOF") == "this is not a PDF, or it is damaged");
  CHECK(refusal(locked(finished(Archive::full))) == "this PDF is locked with a password");
}

TEST_CASE("a sheet cut off anywhere never ends in more than a refusal") {
  const std::string bytes = finished(Archive::full);
  for (size_t part = 1; part < 16; ++part) {
    const auto spec = embedded_spec(bytes.substr(0, bytes.size() * part / 16));
    if (!spec) CHECK(spec.messages.size() == 1);
    if (spec) CHECK(spec.value->name == "fern-ravine.yaml");
  }
}

TEST_CASE("a sheet whose index is lost is still opened") {
  std::string bytes = finished(Archive::full);
  bytes.resize(bytes.rfind("startxref"));
  CHECK(embedded_spec(bytes));
}

}  // namespace loamsheet
