#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>

#include "finish/steps.h"
#include "finish/xmp.h"

namespace loamsheet {
namespace {

using Object = QPDFObjectHandle;

Metadata metadata_of(const FinishInput& in) {
  const Pages& pages = in.pages;
  return {pages.title,
          pages.author,
          pages.subject,
          pages.language,
          in.producer,
          in.stamp,
          in.archive == Archive::plain ? 1 : 3};
}

void set_text(Object dictionary, const std::string& key, const std::string& utf8) {
  if (!utf8.empty()) dictionary.replaceKey(key, Object::newUnicodeString(utf8));
}

Object information(const Metadata& m) {
  Object info = Object::newDictionary();
  set_text(info, "/Title", m.title);
  set_text(info, "/Author", m.author);
  set_text(info, "/Subject", m.subject);
  set_text(info, "/Creator", m.producer);
  set_text(info, "/Producer", m.producer);
  info.replaceKey("/CreationDate", Object::newString(pdf_time(m.stamp)));
  info.replaceKey("/ModDate", Object::newString(pdf_time(m.stamp)));
  return info;
}

Object packet(QPDF& pdf, const Metadata& m) {
  Object stream = pdf.newStream(xmp_packet(m));
  stream.getDict().replaceKey("/Type", Object::newName("/Metadata"));
  stream.getDict().replaceKey("/Subtype", Object::newName("/XML"));
  return stream;
}

}  // namespace

void write_metadata(QPDF& pdf, const FinishInput& in) {
  const Metadata m = metadata_of(in);
  pdf.getTrailer().replaceKey("/Info", pdf.makeIndirectObject(information(m)));
  Object catalog = pdf.getRoot();
  catalog.replaceKey("/Metadata", packet(pdf, m));
  set_text(catalog, "/Lang", m.language);
  catalog.replaceKey("/ViewerPreferences", Object::parse("<< /DisplayDocTitle true >>"));
}

void write_output_intent(QPDF& pdf, const std::string& colour_profile) {
  if (colour_profile.empty()) throw Mismatch("there is no colour profile");
  Object profile = pdf.newStream(colour_profile);
  profile.getDict().replaceKey("/N", Object::newInteger(3));
  Object intent = Object::parse(
      "<< /Type /OutputIntent /S /GTS_PDFA1 /OutputConditionIdentifier (sRGB)"
      " /RegistryName (http://www.color.org) /Info (sRGB IEC61966-2.1) >>");
  intent.replaceKey("/DestOutputProfile", profile);
  pdf.getRoot().replaceKey("/OutputIntents", Object::newArray({pdf.makeIndirectObject(intent)}));
}

}  // namespace loamsheet
