# Hummock: `make demo` shows the main job on the demo survey, `make test` checks everything.

PYTHON  := $(firstword $(wildcard /usr/bin/python3) python3)
VENV    := .venv/bin/python
VERSION := $(shell sed -n 's/^version=//p' metadata.txt)
ZIP     := hummock-$(VERSION).zip
OUT     := out
DEMO    := test_data/demo
TESTS   := tests
BENCHES := $(sort $(wildcard tests/benchmarks/bench_*.py))
SCRIPTS := .ci/zip .ci/check_zip .ci/i18n .ci/pictures .ci/elevation .ci/help_pictures .ci/uncoded_pictures

export PYTHON
export QT_QPA_PLATFORM ?= offscreen

.PHONY: help demo test test-matrix lint bench fuzz zip install pictures i18n clean

help:
	@echo "make demo      survey to surface, contours and report, into $(OUT)/"
	@echo "make test      all tests, those in QGIS included"
	@echo "make test-matrix  the tests in QGIS 3.22, 3.40 and 3.44, in Debian folders of their own (as root)"
	@echo "make lint      style, types, security, and the plugin directory's rules"
	@echo "make bench     speed against the outside references"
	@echo "make fuzz      100,000 damaged survey files through the readers"
	@echo "make zip       $(ZIP), for Plugins > Manage and Install Plugins > Install from ZIP"
	@echo "make install   the same into your own QGIS profile"
	@echo "make pictures  the pictures of the README and of the help, made in QGIS"
	@echo "make i18n      the translatable texts, into i18n/"

demo:
	@.ci/setup demo
	@$(PYTHON) -m plugin.core $(DEMO)/survey.csv --crs EPSG:25832 --interval 0.25 \
		--check-points $(DEMO)/check_points.csv --rim-edge 10 \
		--smooth 0.25 --calm 0.015 --dem 0.5 --thin 0.03 \
		--line $(DEMO)/centreline.geojson --lane 2.3 \
		--water --inlets $(DEMO)/inlets.csv --rain 60 --runoff 0.3 \
		--pad $(DEMO)/pad.geojson --pad-level balance --cut-slope 2 --fill-slope 2.5 --earth-factor 0.9 \
		--since $(DEMO)/before.2dm --other-sigma 0.015 --regions $(DEMO)/phases.geojson \
		--volume-line $(DEMO)/centreline.geojson --volume-width 6 --basin 548322.8,5712471.2 --out $(OUT)

# A worker that crashes ends the run: one put in its place can wait for ever.
test:
	@.ci/setup test
	@$(VENV) -m pytest -n auto --dist loadfile --max-worker-restart 0 $(TESTS)

# SUITES: some of bookworm, trixie, testing. TESTS: which tests. MATRIX_DIR: where the folders are kept.
test-matrix:
	@TESTS="$(TESTS)" .ci/matrix $(SUITES)

lint:
	@.ci/setup test
	@$(VENV) -m ruff check . $(SCRIPTS)
	@$(VENV) -m ruff format --check . $(SCRIPTS)
	@$(VENV) -m mypy
	@$(VENV) -m bandit --quiet --recursive --configfile pyproject.toml plugin
	@$(VENV) .ci/check_zip

bench:
	@.ci/setup test
	@for file in $(BENCHES); do echo "== $$file"; $(VENV) -m tests.benchmarks.$$(basename $$file .py) || exit 1; done

fuzz:
	@.ci/setup test
	@$(VENV) -W ignore -m tests.fuzz

zip:
	@.ci/setup zip
	@$(PYTHON) .ci/zip

install: zip
	@.ci/install $(ZIP)

pictures:
	@.ci/setup pictures
	@$(PYTHON) .ci/pictures tests/pictures
	@$(VENV) .ci/help_pictures plugin/help
	@$(VENV) .ci/uncoded_pictures tests/pictures

i18n:
	@.ci/i18n

clean:
	@rm -rf $(OUT) $(ZIP) .venv
