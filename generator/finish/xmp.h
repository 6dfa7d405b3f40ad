// xmp: the metadata packet of a document (ISO 16684-1) in the schemas dc, xmp, pdf and pdfaid.
#pragma once
#include <string>

namespace loamsheet {

struct Metadata {
  std::string title, author, subject, language;  // UTF-8; empty ones are left out
  std::string producer;
  long long stamp = 0;  // seconds since 1970, UTC: creation and modification
  int pdfa_part = 3;    // of ISO 19005, at conformance level B
};

std::string xmp_packet(const Metadata&);

// A time as XMP writes it (ISO 8601) and as PDF does (ISO 32000-1, 7.9.4), both in UTC.
std::string xmp_time(long long stamp);
std::string pdf_time(long long stamp);

}  // namespace loamsheet
