"""PDF files whose objects are put into one order: the pages stay, by an independent reader."""

from __future__ import annotations

import io

import pypdf
import pytest

from plugin.core.handover.pdf_order import NotPlain, ordered, settle_pdf


def a_pdf(fonts=("Bold", "Plain"), tags=("QAAAAA", "QNAAAA")) -> bytes:
    """One page in two fonts, which are written in the order given, as a program does that keeps them in a set."""
    objects = {
        1: b"<< /Title (9 0 R and endobj \\) stream\n) >>",
        2: b"<< /Type /Catalog /Pages 3 0 R >>",
        3: b"<< /Type /Pages /Kids [4 0 R] /Count 1 /MediaBox [0 0 200 100] >>",
        4: b"<< /Type /Page /Parent 3 0 R /Contents 5 0 R /Resources << /Font << /A 7 0 R /B 8 0 R >> >> >>",
    }
    text = b"BT /A 12 Tf 10 50 Td (endstream 7 0 R) Tj /B 12 Tf 0 -20 Td (other) Tj ET"
    objects[5] = b"<< /Length 6 0 R >>\nstream\n" + text + b"\nendstream"
    objects[6] = b"%d" % len(text)
    number, tag_of = 9, dict(zip(fonts, tags))
    for font in fonts:
        name = f"/{tag_of[font]}+{font}".encode()
        own = 7 if font == "Bold" else 8
        objects[own] = b"<< /Type /Font /Subtype /Type1 /BaseFont %s /FontDescriptor %d 0 R >>" % (name, number)
        objects[number] = b"<< /Type /FontDescriptor /FontName %s /Flags 4 >>" % name
        number += 1
    return written(objects)


def written(objects) -> bytes:
    data, places = b"%PDF-1.4\n", {}
    for number, text in objects.items():
        places[number] = len(data)
        data += b"%d 0 obj\n%s\nendobj\n" % (number, text)
    table = b"".join(b"%010d 00000 n \n" % places[number] for number in sorted(places))
    start = len(data)
    data += b"xref\n0 %d\n0000000000 65535 f \n%s" % (len(places) + 1, table)
    return data + b"trailer\n<< /Size %d /Info 1 0 R /Root 2 0 R >>\nstartxref\n%d\n%%%%EOF\n" % (
        len(places) + 1,
        start,
    )


def added(data: bytes) -> bytes:
    """The file with another title and an object nothing refers to, added at its end."""
    first = len(data)
    data += b"1 0 obj\n<< /Title (newer) >>\nendobj\n"
    other = len(data)
    data += b"11 0 obj\n<< /Nothing true >>\nendobj\n"
    earlier = int(data.rsplit(b"startxref\n", 1)[1].split(b"\n")[0])
    start = len(data)
    data += b"xref\n0 1\n0000000000 65535 f \n1 1\n%010d 00000 n \n11 1\n%010d 00000 n \n" % (first, other)
    return data + b"trailer\n<< /Size 12 /Info 1 0 R /Root 2 0 R /Prev %d >>\nstartxref\n%d\n%%%%EOF\n" % (
        earlier,
        start,
    )


def read(data: bytes) -> pypdf.PdfReader:
    return pypdf.PdfReader(io.BytesIO(data), strict=True)


def fonts_of(data: bytes):
    return {key: str(font["/BaseFont"]) for key, font in read(data).pages[0]["/Resources"]["/Font"].items()}


def test_the_order_of_fonts_makes_no_difference():
    one, other = a_pdf(), a_pdf(("Plain", "Bold"))
    assert one != other
    assert ordered(one) == ordered(other)


def test_the_pages_stay():
    data = a_pdf()
    page = read(ordered(data)).pages[0]
    assert page.extract_text() == read(data).pages[0].extract_text() == "endstream 7 0 R\nother"
    assert page.get_contents().get_data() == read(data).pages[0].get_contents().get_data()
    assert page.mediabox == read(data).pages[0].mediabox
    assert fonts_of(data) == {"/A": "/QAAAAA+Bold", "/B": "/QNAAAA+Plain"}
    assert fonts_of(ordered(data)) == {"/A": "/QAAAAA+Bold", "/B": "/QBAAAA+Plain"}
    assert read(ordered(data)).metadata.title == read(data).metadata.title == "9 0 R and endobj ) stream\n"


def test_twice_is_once():
    assert ordered(ordered(a_pdf())) == ordered(a_pdf())


def test_what_was_added_replaces_what_was_there():
    settled = ordered(added(a_pdf()))
    assert read(settled).metadata.title == "newer"
    assert b"Nothing" not in settled
    assert settled.count(b"startxref") == 1
    assert read(settled).pages[0].extract_text() == "endstream 7 0 R\nother"


@pytest.mark.parametrize(
    "damage",
    [
        (b"startxref", b"startxxxx"),
        (b"xref\n0 ", b"xxxx\n0 "),
        (b"/Root 2 0 R", b"/Moot 2 0 R"),
        (b"/Size", b"/Encrypt 1 0 R /Size"),
        (b"0000000009 00000 n", b"0000000010 00000 n"),
        (b"\nendstream", b"\nendsxream"),
        (b"/Length 6 0 R", b"/Length 8 0 R"),
        (b" 00000 n \n", b" 0000x n \n"),
    ],
)
def test_files_of_another_build_stay_as_they_are(tmp_path, damage):
    data = a_pdf().replace(*damage)
    with pytest.raises(NotPlain):
        ordered(data)
    path = tmp_path / "a.pdf"
    path.write_bytes(data)
    assert not settle_pdf(path)
    assert path.read_bytes() == data
    path.write_bytes(a_pdf())
    assert settle_pdf(path)
    assert path.read_bytes() == ordered(a_pdf())
