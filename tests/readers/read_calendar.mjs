// Reads a calendar with ical.js of the npm registry, and says how many events it found, or what is
// wrong with them. Usage: node read_calendar.mjs ICAL.JS FILE
import { readFileSync } from "node:fs";

function fail(why) {
  console.log(why);
  process.exit(1);
}

const { default: ICAL } = await import(process.argv[2]);
const calendar = new ICAL.Component(ICAL.parse(readFileSync(process.argv[3], "utf8")));
if (calendar.getFirstPropertyValue("version") !== "2.0") fail("not a calendar of version 2.0");
const events = calendar.getAllSubcomponents("vevent").map((part) => new ICAL.Event(part));
if (new Set(events.map((event) => event.uid)).size !== events.length) fail("two events have one UID");
for (const event of events) {
  if (!event.startDate.isDate) fail(`${event.uid}: has a time of day`);
  if (event.duration.toSeconds() !== 24 * 60 * 60) fail(`${event.uid}: not a day long`);
  if (!event.summary || !event.description) fail(`${event.uid}: without words`);
  if (event.component.getFirstSubcomponent("valarm")) fail(`${event.uid}: an alarm is on`);
}
console.log(events.length);
