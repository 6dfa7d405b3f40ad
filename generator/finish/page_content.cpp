#include <qpdf/Pl_Buffer.hh>
#include <qpdf/Pl_Flate.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFPageObjectHelper.hh>

#include <cmath>

#include "base/text.h"
#include "finish/content.h"
#include "finish/steps.h"

namespace loamsheet {
namespace {

using Object = QPDFObjectHandle;

// A figure keeps its size: what was drawn and the room it has must agree to a point.
void check_size(Object form, const FigureMark& mark) {
  const auto box = form.getDict().getKey("/BBox").getArrayAsRectangle();
  const double off_x = std::abs(box.urx - box.llx - mark.box.width());
  const double off_y = std::abs(box.ury - box.lly - mark.box.height());
  if (off_x > 1 || off_y > 1) throw Mismatch("figure " + mark.id + " was drawn in another size");
}

std::string paint_figure(const FigureMark& mark, int id, const std::string& name) {
  const std::string begin =
      id < 0 ? "/Artifact BMC\n" : "/Figure <</MCID " + std::to_string(id) + ">> BDC\n";
  return begin + "q 1 0 0 1 " + fixed(mark.box.left, 2) + " " + fixed(mark.box.bottom, 2) + " cm " +
         name + " Do Q\nEMC\n";
}

// One page while it is marked.
struct Painting {
  const Page& page;
  const PageContent& content;
  const Pages& pages;
  const Forms& forms;
};

std::vector<TextPiece> text_pieces(const Painting& p) {
  std::vector<TextPiece> pieces;
  for (size_t i = 0; i < p.page.marks.size(); ++i) {
    const auto* text = std::get_if<TextMark>(&p.page.marks[i]);
    if (text && text->tag < 0) pieces.push_back({});
    if (text && text->tag >= 0) {
      pieces.push_back(
          {p.content.id_of_mark[i], p.pages.tags[text->tag].role, p.content.blank_after[i]});
    }
  }
  return pieces;
}

// Paints the page's figures and enters them in its resources.
std::string paint_figures(const Painting& p, Object resources) {
  std::string out;
  Object names = Object::newDictionary();
  for (size_t i = 0; i < p.page.marks.size(); ++i) {
    const auto* mark = std::get_if<FigureMark>(&p.page.marks[i]);
    if (!mark) continue;
    const auto form = p.forms.find(mark->id);
    if (form == p.forms.end()) throw Mismatch("figure " + mark->id + " was not drawn");
    check_size(form->second, *mark);
    const std::string name = "/Figure" + std::to_string(names.getKeys().size() + 1);
    names.replaceKey(name, form->second);
    out += paint_figure(*mark, p.content.id_of_mark[i], name);
  }
  if (!out.empty()) resources.replaceKey("/XObject", names);
  return out;
}

std::string bytes_of(Buffer& data) {
  return {reinterpret_cast<const char*>(data.getBuffer()), data.getSize()};
}

PageStream page_stream(QPDFPageObjectHelper target, const Painting& p) {
  Object page = target.getObjectHandle();
  Object resources = page.getKey("/Resources");
  return {bytes_of(*page.getKey("/Contents").getStreamData(qpdf_dl_generalized)), text_pieces(p),
          paint_figures(p, resources)};
}

std::string deflated(const std::string& stream) {
  Pl_Buffer buffer("packed");
  Pl_Flate flate("pack", &buffer, Pl_Flate::a_deflate);
  flate.writeString(stream);
  flate.finish();
  return bytes_of(*buffer.getBufferSharedPointer());
}

// Figures start from a fresh graphics state.
std::string packed(const PageStream& page) {
  const std::string marked = with_marks(page.painted, page.texts);
  return deflated(page.figures.empty() ? marked : "q\n" + marked + "Q\n" + page.figures);
}

}  // namespace

std::vector<PageStream> page_streams(QPDF& pdf, const Pages& pages, const Content& content,
                                     const Forms& forms) {
  auto painted = QPDFPageDocumentHelper(pdf).getAllPages();
  if (painted.size() != pages.pages.size()) throw Mismatch("not every page was painted");
  std::vector<PageStream> streams;
  for (size_t i = 0; i < painted.size(); ++i) {
    streams.push_back(page_stream(painted[i], {pages.pages[i], content[i], pages, forms}));
  }
  return streams;
}

std::vector<std::string> packed(const std::vector<PageStream>& streams) {
  std::vector<std::string> all;
  for (const PageStream& stream : streams) all.push_back(packed(stream));
  return all;
}

void replace_contents(QPDF& pdf, const std::vector<std::string>& packed) {
  auto pages = QPDFPageDocumentHelper(pdf).getAllPages();
  for (size_t i = 0; i < packed.size(); ++i) {
    Object stream = pdf.newStream();
    stream.replaceStreamData(packed[i], Object::newName("/FlateDecode"), Object::newNull());
    pages[i].getObjectHandle().replaceKey("/Contents", stream);
  }
}

}  // namespace loamsheet
