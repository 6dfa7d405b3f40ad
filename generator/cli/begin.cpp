#include "job/begin.h"

#include "cli/session.h"

namespace loamsheet {

void run_begin(Session& session) {
  const auto starter = starter_spec(session.world, {session.options.animal, session.options.size});
  session.report(starter.messages);
  if (starter) session.data(*starter.value);
}

}  // namespace loamsheet
