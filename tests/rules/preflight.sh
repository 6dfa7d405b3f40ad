#!/bin/sh
# Checks each PDF named against PDF/A-1b with the validator of PDFBox. Prints its findings; exits
# with 1 when any file has one, with 2 when the validator is missing.
jars=/usr/share/java
path=
for jar in preflight pdfbox2 xmpbox fontbox2 commons-logging commons-io javax.activation jaxb-api; do
  [ -f "$jars/$jar.jar" ] || { echo "$jars/$jar.jar is missing: see tests/packages" >&2; exit 2; }
  path=$path:$jars/$jar.jar
done
status=0
for pdf in "$@"; do
  found=$(java -cp "${path#:}" org.apache.pdfbox.preflight.Validator_A1b "$pdf" 2>&1)
  if [ $? -ne 0 ] || ! echo "$found" | grep -q 'is a valid PDF/A-1b file'; then status=1; fi
  echo "$found"
done
exit $status
