#!/bin/sh
# Makes the example records beside this file from the demo's store: run `clinchbook demo` first, then this, in the
# project's folder. CLINCHBOOK names the command when it is not on the path, STORE another store.
set -eu
run="${CLINCHBOOK:-clinchbook}"
store="${STORE:-outputs/demo-store}"
out=outputs/handover
day=2026-05-12
export_one() { $run export Admiral --dated "$day" --store "$store" "$@"; }
export_one --format html --for owner --with-audio --out "$out/admiral-owner.html"
export_one --format html --for vet --out "$out/admiral-vet.html"
export_one --format pdf --for vet --out "$out/admiral-vet.pdf"
export_one --format pdf --for owner --redact --out "$out/admiral-redacted.pdf"
export_one --format md --for owner --out "$out/admiral-owner.md"
export_one --format csv --out "$out/admiral.csv"
export_one --format json --out "$out/admiral.json"
cp pipeline/using/clinchbook-record-1.schema.json "$out/"
