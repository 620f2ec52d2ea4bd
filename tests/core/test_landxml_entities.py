"""LandXML files with entities: bombs and files from elsewhere are refused at once, in words, and nothing is opened."""

from __future__ import annotations

import os
import signal
import socket
import time
import tracemalloc

import pytest
from test_landxml import GOOD

from plugin.core.handover.landxml_read import read_landxml
from plugin.core.messages import SurveyError

#: Ten of ten of ten ...: 10⁹ letters from a few hundred bytes ("billion laughs", CAPEC-197).
GROWING = "<!ENTITY a0 'aaaaaaaaaa'>" + "".join(
    f"<!ENTITY a{i} '{f'&a{i - 1};' * 10}'>" for i in range(1, 9)
)  # fmt: skip
#: One long entity, many times ("quadratic blowup").
LONG = "<!ENTITY long '" + "a" * 1_000_000 + "'>"


def refused(tmp_path, text) -> str:
    path = tmp_path / "plan.xml"
    path.write_text(text, encoding="utf-8")
    with pytest.raises(SurveyError) as raised:
        read_landxml(path)
    assert raised.value.code == "landxml.declarations"
    said = str(raised.value)
    assert said.startswith(f"{path}, line 1: ")
    assert "declares a document type or entities" in said
    assert "it is not read" in said
    assert "\n" not in said
    return said


@pytest.mark.parametrize(
    ("declared", "used"),
    [(GROWING, "&a8;"), (LONG, "&long;" * 5_000), ("<!ENTITY a '&b;'><!ENTITY b '&a;'>", "&a;")],
    ids=["growing", "long", "ring"],
)
def test_a_bomb_takes_neither_time_nor_memory(tmp_path, declared, used):
    bomb = f"<!DOCTYPE LandXML [{declared}]>" + GOOD.replace("s0", used)
    tracemalloc.start()
    begin = time.process_time()
    try:
        refused(tmp_path, bomb)
        most = tracemalloc.get_traced_memory()[1]
    finally:
        tracemalloc.stop()
    assert time.process_time() - begin < 2
    assert most < 20 * len(bomb) + 5_000_000


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="a queue that waits for a writer is needed")
@pytest.mark.parametrize("use", ["&x;", "none"])
def test_a_file_of_the_machine_is_not_opened(tmp_path, use):
    """Who opens this queue waits for ever: the alarm would tell."""
    queue = tmp_path / "queue"
    os.mkfifo(queue)

    def waited(*_):
        raise AssertionError("the reader opened what the file named")

    before = signal.signal(signal.SIGALRM, waited)
    signal.alarm(5)
    try:
        for outside in (f"<!ENTITY x SYSTEM '{queue.as_uri()}'>", f"<!ENTITY % x SYSTEM '{queue}'>%x;"):
            refused(tmp_path, f"<!DOCTYPE LandXML [{outside}]>" + GOOD.replace("s0", use))
        refused(tmp_path, f"<!DOCTYPE LandXML SYSTEM '{queue.as_uri()}'>" + GOOD)
    finally:
        signal.alarm(0)
        signal.signal(signal.SIGALRM, before)


def test_no_secret_is_told(tmp_path):
    secret = tmp_path / "secret.txt"
    secret.write_text("the moor at nine")
    said = refused(tmp_path, f"<!DOCTYPE L [<!ENTITY x SYSTEM '{secret.as_uri()}'>]>" + GOOD.replace("s0", "&x;"))
    assert "moor" not in said


def test_nobody_is_called(tmp_path):
    with socket.create_server(("127.0.0.1", 0)) as server:
        server.settimeout(0.2)
        address = f"http://127.0.0.1:{server.getsockname()[1]}/x.dtd"
        refused(tmp_path, f"<!DOCTYPE L SYSTEM '{address}'>" + GOOD)
        refused(tmp_path, f"<!DOCTYPE L [<!ENTITY x SYSTEM '{address}'>]>" + GOOD.replace("s0", "&x;"))
        with pytest.raises(OSError, match="timed out"):
            server.accept()


def test_the_characters_of_xml_itself_are_no_entities_of_the_file(tmp_path):
    path = tmp_path / "plan.xml"
    path.write_text(GOOD.replace("s0", "Field &amp; Lane &#246;"), encoding="utf-8")
    assert read_landxml(path).surfaces[0].name == "Field & Lane ö"
