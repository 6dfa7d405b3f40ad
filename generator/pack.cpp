// pack SOURCE OUT: compiles the YAML that ships with the program, below the folder SOURCE, into the
// file OUT. The build runs it.
#include <cstdio>
#include <vector>

#include "read/compiled.h"
#include "world/world.h"

int main(int argc, char** argv) {
  using namespace loamsheet;
  if (argc != 3) return 2;
  const std::string source = argv[1];
  const auto world = real_world();
  std::vector<YamlFilePtr> files;
  std::vector<Diagnostic> problems;
  for (const std::string& name : shipped_files(*world, source)) {
    auto text = world->read(source + '/' + name);
    files.push_back(std::make_shared<const YamlFile>(name, text.value_or("")));
    const auto& more = files.back()->problems();
    problems.insert(problems.end(), more.begin(), more.end());
  }
  std::fputs(render(problems, {}).c_str(), stderr);
  return problems.empty() && world->write(argv[2], compile(files)) ? 0 : 1;
}
