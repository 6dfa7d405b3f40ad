// csv: rows after RFC 4180.
#pragma once
#include <string>
#include <vector>

namespace loamsheet {

// Fields joined by commas, quoted where they hold a comma, a quote or a line break; ends the line.
std::string csv_line(const std::vector<std::string>& fields);

}  // namespace loamsheet
