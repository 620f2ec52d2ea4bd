"""The check of the zip finds what the plugin directory would refuse."""

import importlib.util
import re
import subprocess
import sys
import zipfile
from importlib.machinery import SourceFileLoader
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
METADATA = (ROOT / "metadata.txt").read_text(encoding="utf-8")
START = "def classFactory(iface):\n    return None\n"
ADDRESSES = ("homepage", "repository", "tracker", "email")
REAL = re.sub(r"example\.org", "hummock-survey.eu", METADATA)


@pytest.fixture(scope="module")
def script():
    loader = SourceFileLoader("check_zip", str(ROOT / ".ci" / "check_zip"))
    module = importlib.util.module_from_spec(importlib.util.spec_from_loader("check_zip", loader))
    loader.exec_module(module)
    return module


def packed(path, more=None, metadata=METADATA, without=()):
    files = {"metadata.txt": metadata, "LICENSE": "text", "__init__.py": START, "icon.svg": "<svg/>"}
    with zipfile.ZipFile(path / "plugin.zip", "w") as archive:
        for name, text in files.items():
            if name not in without:
                archive.writestr(f"hummock/{name}", text)
        for name, data in (more or {}).items():
            archive.writestr(name, data)
    return path / "plugin.zip"


def changed(key, value):
    return re.sub(rf"^{key}=.*$", f"{key}={value}" if value is not None else "", METADATA, flags=re.MULTILINE)


def test_a_clean_zip_passes(script, tmp_path):
    assert script.faults(packed(tmp_path)) == []
    fine = {"hummock/i18n/hummock_de.qm": b"\x3c\xb8\x64", "hummock/core/a.py": "x = 1\n"}
    assert script.faults(packed(tmp_path, fine)) == []


@pytest.mark.parametrize(
    ("name", "data", "said"),
    [
        ("hummock/fast.so", b"x", "binary"),
        ("hummock/fast.pyd", b"x", "binary"),
        ("hummock/run.EXE", b"x", "binary"),
        ("hummock/a.dll", b"x", "binary"),
        ("hummock/data.dat", b"\x7fELF\x02\x01", "program or library"),
        ("hummock/data.csv", b"MZ\x90\x00", "program or library"),
        ("hummock/__pycache__/a.cpython-39.pyc", b"x", "left over"),
        ("hummock/core/__pycache__/note.txt", b"x", "left over"),
        ("hummock/.git/config", b"x", "hidden"),
        ("hummock/.gitignore", b"x", "hidden"),
        ("hummock/core/.hidden.py", b"", "hidden"),
        ("__MACOSX/hummock/x", b"", "not in the folder"),
        ("other/a.py", b"", "not in the folder"),
        ("README.md", b"", "not in the folder"),
        ("hummock/../a.py", b"", "leads out"),
        ("hummock/Höhe.csv", b"", "ASCII"),
        ("hummock/broken.py", b"def (", "is not Python"),
    ],
)
def test_what_does_not_belong_is_found(script, tmp_path, name, data, said):
    assert any(said in fault for fault in script.faults(packed(tmp_path, {name: data})))


@pytest.mark.parametrize("name", ["metadata.txt", "LICENSE", "__init__.py"])
def test_what_is_missing_is_found(script, tmp_path, name):
    assert f"hummock/{name} is missing" in script.faults(packed(tmp_path, without=[name]))


@pytest.mark.parametrize(
    ("key", "value", "said"),
    [
        *((key, None, "missing or empty") for key in (
            "name", "description", "about", "version", "qgisMinimumVersion", "author", "email", "repository", "tracker"
        )),
        ("about", "", "missing or empty"),
        ("about", "TODO", "still says"),
        ("author", "Your Name", "still says"),
        ("tracker", "http://bugs", "still says"),
        ("repository", "somewhere", "no web address"),
        ("email", "nobody", "email"),
        ("version", "new", "none such as"),
        ("qgisMinimumVersion", "three", "no version"),
        ("category", "Analysis", "none of"),
        ("icon", "other.svg", "not in the zip"),
        ("experimental", "perhaps", "neither"),
    ],
)  # fmt: skip
def test_metadata_that_would_be_refused_is_found(script, tmp_path, key, value, said):
    found = script.faults(packed(tmp_path, metadata=changed(key, value)))
    assert any(key in fault and said in fault for fault in found), found


def test_metadata_that_cannot_be_read(script, tmp_path):
    assert any("cannot be read" in fault for fault in script.faults(packed(tmp_path, metadata="name=Hummock\n")))


def test_no_class_factory(script, tmp_path):
    path = packed(tmp_path, {"hummock/__init__.py": "x = 1\n"}, without=["__init__.py"])
    assert "hummock/__init__.py: has no classFactory" in script.faults(path)


def test_a_zip_that_is_too_large(script, tmp_path, monkeypatch):
    monkeypatch.setattr(script, "LARGEST", 100)
    assert "bytes" in script.faults(packed(tmp_path))[0]


def test_addresses_of_examples_stop_a_release(script, tmp_path):
    found = script.faults(packed(tmp_path), release=True)
    assert len(found) == sum(f"\n{key}=" in METADATA and "example.org" in METADATA for key in ADDRESSES)
    assert script.faults(packed(tmp_path, metadata=REAL), release=True) == []


def test_ours_keeps_the_rules():
    """As ``make lint`` calls it."""
    done = subprocess.run(
        [sys.executable, str(ROOT / ".ci" / "check_zip")], capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stderr
    assert "keeps the directory's rules" in done.stdout
