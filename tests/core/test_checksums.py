"""SHA-256 of files handed over, against the standard's own example and the system's checker."""

import shutil
import subprocess

import pytest

from plugin.core.handover.checksums import digest, digests, write_checksums
from plugin.core.messages import SurveyError


def test_the_example_of_the_standard(tmp_path):
    """FIPS 180-4's message "abc": digest from NIST's example values (from memory)."""
    file = tmp_path / "abc.txt"
    file.write_bytes(b"abc")
    found = digest(file)
    assert found.sha256 == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
    assert found.size == 3


@pytest.mark.skipif(shutil.which("sha256sum") is None, reason="no sha256sum here")
def test_the_list_is_what_sha256sum_checks(tmp_path):
    (tmp_path / "in").mkdir()
    files = [tmp_path / "one.csv", tmp_path / "in" / "two.bin"]
    files[0].write_text("a,b\n")
    files[1].write_bytes(bytes(range(256)) * 9000)
    write_checksums(digests(files), tmp_path / "checksums.sha256")
    checked = subprocess.run(
        ["sha256sum", "-c", "checksums.sha256"], cwd=tmp_path, capture_output=True, text=True, check=False
    )
    assert checked.returncode == 0, checked.stdout + checked.stderr
    files[0].write_text("a,c\n")
    assert subprocess.run(["sha256sum", "-c", "checksums.sha256"], cwd=tmp_path, capture_output=True).returncode == 1


def test_a_file_that_is_not_there_is_refused(tmp_path):
    with pytest.raises(SurveyError, match=r"plan\.pdf"):
        digests([tmp_path / "plan.pdf"])
