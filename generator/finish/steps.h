// steps: what finish does to a document, one step a file. The steps may throw (qpdf does);
// finish.cpp catches at the folder's wall.
#pragma once
#include <map>
#include <stdexcept>
#include <string>
#include <vector>

#include "finish/content.h"
#include "finish/finish.h"

class QPDF;
class QPDFObjectHandle;

namespace loamsheet {

// The parts handed in do not belong together: a fault of an earlier stage, not of the user.
struct Mismatch : std::runtime_error {
  using std::runtime_error::runtime_error;
};

// Which piece of marked content shows which tag.
struct PageContent {
  std::vector<int> tag_of_id;     // by marked-content id
  std::vector<int> id_of_mark;    // by mark; -1: an artifact, or neither text nor figure
  std::vector<bool> blank_after;  // by mark: its text goes on after a blank that is not painted
};
using Content = std::vector<PageContent>;

// Numbers the pieces page by page. Neighbouring texts of one tag are one piece.
Content number_content(const Pages&);

// The figures as form XObjects of `pdf`, by id, without transparency group. `drawn` has a page a
// figure and must live until `pdf` is written.
using Forms = std::map<std::string, QPDFObjectHandle>;
Forms import_figures(QPDF& pdf, QPDF& drawn, const Figures&);

// A page's content as it was painted, and what is to become of it.
struct PageStream {
  std::string painted;
  std::vector<TextPiece> texts;  // what each of its texts shows
  std::string figures;           // the operators that paint its figures
};

// Enters the figures in the pages' resources.
std::vector<PageStream> page_streams(QPDF&, const Pages&, const Content&, const Forms&);

// Every text and every other painting in marked content, figures painted, deflated. Needs no
// document, so that it can be done while other steps work on it.
std::vector<std::string> packed(const std::vector<PageStream>&);

void replace_contents(QPDF&, const std::vector<std::string>& packed);

// The structure tree over the marked content, and what says that there is one.
void write_structure(QPDF&, const Pages&, const Content&);

// Bookmarks as an outline, nested by level.
void write_outline(QPDF&, const Pages&);

// Information dictionary, XMP packet, language and the viewer's title bar; they say the same.
void write_metadata(QPDF&, const FinishInput&);

// The output intent GTS_PDFA1 with the colour profile.
void write_output_intent(QPDF&, const std::string& colour_profile);

// Embeds the attachments and lists them as associated files of the document (PDF/A-3).
void embed_files(QPDF&, const FinishInput&);

// Mends the fonts of libharu and Cairo. `cid_sets`: PDF/A-1 asks for them, later parts do not.
void repair_fonts(QPDF&, bool cid_sets);

// Once, before anything is packed: how hard to deflate.
void choose_flate_level();

// The whole document as bytes; the same for the same input.
std::string written(QPDF&, Archive);

}  // namespace loamsheet
