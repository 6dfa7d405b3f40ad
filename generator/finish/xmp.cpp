#include "finish/xmp.h"

#include <algorithm>

#include "base/date.h"

namespace loamsheet {
namespace {

std::string escaped(const std::string& text) {
  std::string out;
  for (char c : text) {
    if (c == '&') {
      out += "&amp;";
    } else if (c == '<') {
      out += "&lt;";
    } else if (c == '>') {
      out += "&gt;";
    } else {
      out += c;
    }
  }
  return out;
}

std::string element(const std::string& name, const std::string& value) {
  return value.empty() ? "" : "   <" + name + ">" + escaped(value) + "</" + name + ">\n";
}

// A property that is an rdf:Alt by language, an rdf:Seq or an rdf:Bag of one.
std::string listed(const std::string& name, const std::string& list, const std::string& value) {
  if (value.empty()) return "";
  const std::string language = list == "Alt" ? " xml:lang=\"x-default\"" : "";
  return "   <" + name + "><rdf:" + list + "><rdf:li" + language + ">" + escaped(value) +
         "</rdf:li></rdf:" + list + "></" + name + ">\n";
}

std::string two_digits(long long n) {
  return (n < 10 ? "0" : "") + std::to_string(n);
}

// The time of day, its parts with `between` among them.
std::string clock(long long stamp, const std::string& between) {
  const long long second = stamp - unix_seconds(date_of(stamp));
  return two_digits(second / 3600) + between + two_digits(second / 60 % 60) + between +
         two_digits(second % 60);
}

std::string description(const Metadata& m) {
  const std::string time = xmp_time(m.stamp);
  return element("pdfaid:part", std::to_string(m.pdfa_part)) + element("pdfaid:conformance", "B") +
         element("dc:format", "application/pdf") + listed("dc:title", "Alt", m.title) +
         listed("dc:creator", "Seq", m.author) + listed("dc:description", "Alt", m.subject) +
         listed("dc:language", "Bag", m.language) + element("xmp:CreatorTool", m.producer) +
         element("xmp:CreateDate", time) + element("xmp:ModifyDate", time) +
         element("pdf:Producer", m.producer);
}

}  // namespace

std::string xmp_time(long long stamp) {
  return iso(date_of(stamp)) + "T" + clock(stamp, ":") + "Z";
}

std::string pdf_time(long long stamp) {
  std::string day = iso(date_of(stamp));
  std::erase(day, '-');
  return "D:" + day + clock(stamp, "") + "Z";
}

std::string xmp_packet(const Metadata& m) {
  return "<?xpacket begin=\"\xEF\xBB\xBF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
         "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n"
         " <rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n"
         "  <rdf:Description rdf:about=\"\""
         " xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\""
         " xmlns:dc=\"http://purl.org/dc/elements/1.1/\""
         " xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\""
         " xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\">\n" +
         description(m) +
         "  </rdf:Description>\n"
         " </rdf:RDF>\n"
         "</x:xmpmeta>\n"
         "<?xpacket end=\"r\"?>";
}

}  // namespace loamsheet
