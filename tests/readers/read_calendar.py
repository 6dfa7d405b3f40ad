"""Reads a calendar with Debian's python3-icalendar, and says how many events it found, or what is
wrong with them. Usage: read_calendar.py FILE"""
import sys

import icalendar

with open(sys.argv[1], "rb") as file:
    data = file.read()
calendar = icalendar.Calendar.from_ical(data)
events = calendar.walk("VEVENT")
uids = [str(event["UID"]) for event in events]
if len(set(uids)) != len(uids):
    sys.exit("two events have one UID")
for event in events:
    if event.errors:
        sys.exit(f"{event['UID']}: {event.errors}")
    start, end = event["DTSTART"].dt, event["DTEND"].dt
    if (end - start).days != 1:
        sys.exit(f"{event['UID']}: not a day long")
    if not str(event["SUMMARY"]) or not str(event["DESCRIPTION"]):
        sys.exit(f"{event['UID']}: without words")
    if event.walk("VALARM"):
        sys.exit(f"{event['UID']}: an alarm is on")
if any(len(line) > 75 for line in data.split(b"\r\n")):
    sys.exit("a line is longer than 75 octets")
print(len(events))
