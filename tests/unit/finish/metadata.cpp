#include "finish/xmp.h"
#include "sheet.h"

namespace loamsheet {
namespace {

bool holds(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("the packet says what the information dictionary says") {
  const std::string bytes = finished(Archive::plain);
  Opened sheet(bytes);
  Object info = sheet.pdf.getTrailer().getKey("/Info");
  CHECK(info.getKey("/Title").getUTF8Value() == "Fern ravine – build sheet");
  CHECK(info.getKey("/Author").getUTF8Value() == "Tarn & Thicket");
  CHECK(info.getKey("/Subject").getUTF8Value() == "TT-0142 <A>");
  CHECK(info.getKey("/CreationDate").getStringValue() == "D:20260307151005Z");
  const std::string packet = stream_text(sheet.pdf.getRoot().getKey("/Metadata"));
  CHECK(holds(packet, "Fern ravine – build sheet</rdf:li>"));
  CHECK(holds(packet, "Tarn &amp; Thicket</rdf:li>"));
  CHECK(holds(packet, "TT-0142 &lt;A&gt;</rdf:li>"));
  CHECK(holds(packet, "<xmp:CreateDate>2026-03-07T15:10:05Z<"));
  CHECK(holds(packet, "<pdf:Producer>loamsheet test<"));
  CHECK(holds(bytes, packet));  // readers look for it without unpacking
}

TEST_CASE("each archive claims its part of PDF/A and its PDF version") {
  const std::string plain = finished(Archive::plain), full = finished(Archive::full);
  CHECK(plain.starts_with("%PDF-1.4"));
  CHECK(holds(plain, "<pdfaid:part>1<"));
  CHECK(full.starts_with("%PDF-1.7"));
  CHECK(holds(full, "<pdfaid:part>3<"));
}

TEST_CASE("the output intent carries the colour profile") {
  Opened sheet(Archive::plain);
  Object intent = sheet.pdf.getRoot().getKey("/OutputIntents").getArrayItem(0);
  CHECK(intent.getKey("/S").getName() == "/GTS_PDFA1");
  CHECK(stream_text(intent.getKey("/DestOutputProfile")) == colour_profile());
}

TEST_CASE("times are written in universal time, before 1970 too") {
  CHECK(pdf_time(0) == "D:19700101000000Z");
  CHECK(xmp_time(-1) == "1969-12-31T23:59:59Z");
}

}  // namespace loamsheet
