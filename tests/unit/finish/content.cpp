#include "finish/content.h"

#include <catch2/catch.hpp>

#include "finish/steps.h"

namespace loamsheet {

TEST_CASE("a text is wrapped in the piece it belongs to") {
  CHECK(with_marks("BT /F1 9 Tf (a) Tj ET", {{0, "P"}}) ==
        "/P <</MCID 0>> BDC\nBT\n/F1 9 Tf\n(a) Tj\nET\nEMC\n");
}

TEST_CASE("what paints outside texts is an artifact, and a text without a tag too") {
  CHECK(with_marks("0.9 g 1 2 3 4 re f BT (a) Tj ET", {{}}) ==
        "/Artifact BMC\n0.9 g\n1 2 3 4 re\nf\nBT\n(a) Tj\nET\nEMC\n");
}

TEST_CASE("states between two texts of one piece leave it open") {
  CHECK(with_marks("BT (a) Tj ET 0.5 g BT (b) Tj ET", {{3, "TD"}, {3, "TD"}}) ==
        "/TD <</MCID 3>> BDC\nBT\n(a) Tj\nET\n0.5 g\nBT\n(b) Tj\nET\nEMC\n");
}

TEST_CASE("texts of two pieces are closed one after the other") {
  CHECK(with_marks("BT ET BT ET", {{0, "H1"}, {1, "P"}}) ==
        "/H1 <</MCID 0>> BDC\nBT\nET\nEMC\n/P <</MCID 1>> BDC\nBT\nET\nEMC\n");
}

TEST_CASE("a text that goes on elsewhere ends with a blank") {
  CHECK(with_marks("BT <0061> Tj ET", {{0, "P", true}}) ==
        "/P <</MCID 0>> BDC\nBT\n<0061> Tj\n<0020> Tj\nET\nEMC\n");
}

TEST_CASE("operators inside strings, names and comments are not operators") {
  CHECK(
      with_marks("% BT\nBT /BT 9 Tf (BT \\) (ET) f) Tj <BE> Tj [(S) 2] TJ ET", {{0, "P"}}) ==
      "/P <</MCID 0>> BDC\n% BT\nBT\n/BT 9 Tf\n(BT \\) (ET) f) Tj\n<BE> Tj\n[(S) 2] TJ\nET\nEMC\n");
}

TEST_CASE("a stream with other texts than were laid out is refused") {
  CHECK_THROWS_AS(with_marks("BT ET", {}), Mismatch);
  CHECK_THROWS_AS(with_marks("BT ET", {{0, "P"}, {1, "P"}}), Mismatch);
  CHECK_THROWS_AS(with_marks("BT ET 0 0 m S BT ET", {{0, "P"}, {0, "P"}}), Mismatch);
}

TEST_CASE("a stream that is cut off ends where it ends") {
  for (const std::string stream : {"(a", "(a\\", "<00", "/", "BT", "[", "% x"}) {
    CHECK_NOTHROW(
        with_marks(stream, stream == "BT" ? std::vector<TextPiece>{{}} : std::vector<TextPiece>{}));
  }
}

}  // namespace loamsheet
