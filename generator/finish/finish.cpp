#include "finish/finish.h"

#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>

#include <future>

#include "finish/steps.h"

namespace loamsheet {
namespace {

Diagnostic fault(Severity severity, std::string message) {
  Diagnostic d;
  d.severity = severity;
  d.message = std::move(message);
  d.fault = Fault::internal;
  return d;
}

// qpdf keeps a view of the bytes: they must live as long as the document.
void open(QPDF& pdf, const char* name, const std::string& bytes) {
  pdf.setSuppressWarnings(true);
  pdf.processMemoryFile(name, bytes.data(), bytes.size());
}

Forms figures_of(QPDF& pdf, QPDF& drawn, const FinishInput& in) {
  if (in.drawn.empty()) return {};
  open(drawn, "drawn figures", in.drawn);
  return import_figures(pdf, drawn, in.figures);
}

void collect_warnings(QPDF& pdf, std::vector<Diagnostic>& into) {
  for (const auto& warning : pdf.getWarnings()) {
    into.push_back(fault(Severity::warning, std::string("finishing the PDF: ") + warning.what()));
  }
}

Outcome<std::string> finished(const FinishInput& in) {
  choose_flate_level();
  QPDF drawn, pdf;
  open(pdf, "painted pages", in.painted);
  const Forms figures = figures_of(pdf, drawn, in);
  const Content content = number_content(in.pages);
  const auto streams = page_streams(pdf, in.pages, content, figures);
  auto packing = std::async(std::launch::async, [&] { return packed(streams); });
  repair_fonts(pdf, in.archive == Archive::plain);
  write_structure(pdf, in.pages, content);
  write_outline(pdf, in.pages);
  write_metadata(pdf, in);
  write_output_intent(pdf, in.colour_profile);
  if (in.archive == Archive::full) embed_files(pdf, in);
  replace_contents(pdf, packing.get());
  Outcome<std::string> out{written(pdf, in.archive), {}};
  collect_warnings(pdf, out.messages);
  collect_warnings(drawn, out.messages);
  return out;
}

}  // namespace

Outcome<std::string> finish(const FinishInput& in) {
  try {
    return finished(in);
  } catch (const std::exception& e) {
    return failure<std::string>(
        fault(Severity::error, std::string("the PDF could not be finished: ") + e.what()));
  }
}

}  // namespace loamsheet
