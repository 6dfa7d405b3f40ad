#include <qpdf/QPDF.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFPageObjectHelper.hh>

#include "finish/steps.h"

namespace loamsheet {
namespace {

using Object = QPDFObjectHandle;

// Cairo has packed the drawing: it goes over as it is.
Object import_figure(QPDF& pdf, QPDFPageObjectHelper page) {
  Object form = page.getFormXObjectForPage(false);
  form.getDict().removeKey("/Group");  // nothing translucent is drawn, and PDF/A-1 forbids it
  Object drawing = page.getObjectHandle().getKey("/Contents");
  if (drawing.isStream()) {
    Object dict = drawing.getDict();
    form.replaceStreamData(drawing.getRawStreamData(), dict.getKey("/Filter"),
                           dict.getKey("/DecodeParms"));
  }
  return pdf.copyForeignObject(form);
}

}  // namespace

Forms import_figures(QPDF& pdf, QPDF& drawn, const Figures& figures) {
  Forms forms;
  auto pages = QPDFPageDocumentHelper(drawn).getAllPages();
  if (pages.size() != figures.all.size()) throw Mismatch("not every figure was drawn");
  for (size_t i = 0; i < pages.size(); ++i) {
    forms.emplace(figures.all[i].id, import_figure(pdf, pages[i]));
  }
  return forms;
}

}  // namespace loamsheet
