"""The text of a survey file: found, decoded, and its line ends made alike."""

from __future__ import annotations

import codecs
import os
import re
from dataclasses import dataclass, replace
from itertools import islice
from typing import Iterator, List, Optional, Sequence, Tuple

import numpy as np

from ..files import PathLike
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from .broken_lines import joined_quotes
from .markup_tables import table_in
from .words import read_word

MISSING = Text("points.missing_file", QT_TRANSLATE_NOOP("core", "{file}: there is no such file; check the path."))
FOLDER = Text("points.folder", QT_TRANSLATE_NOOP("core", "{file}: is a folder; give the survey file inside it."))
UNREADABLE = Text(
    "points.unreadable_file",
    QT_TRANSLATE_NOOP("core", "{file}: cannot be read ({reason}); check its permissions and whether it is in use."),
)
EMPTY = Text("points.empty_file", QT_TRANSLATE_NOOP("core", "{file}: is empty; export the survey again."))
BINARY = Text(
    "points.binary_file",
    QT_TRANSLATE_NOOP("core", "{file}: is a binary file, not text; export the survey as delimited text (CSV)."),
)
UNKNOWN_ENCODING = Text(
    "points.unknown_encoding",
    QT_TRANSLATE_NOOP("core", "{file}: text encoding '{encoding}' is not known; use utf-8, utf-16 or latin-1."),
)
WRONG_ENCODING = Text(
    "points.wrong_encoding",
    QT_TRANSLATE_NOOP("core", "{file}: is not {encoding} text ({reason}); give the encoding it was written in."),
)
ENCODING_ASSUMED = Text(
    "points.encoding_assumed",
    QT_TRANSLATE_NOOP("core", "{file}: is not UTF-8 text; it was read as {encoding}. Check accented letters."),
)

TABLE_OF = Text(
    "points.table_of",
    QT_TRANSLATE_NOOP(
        "core", "{file}: the table of {count} lines in it was read as {kind}; lines count as in that table."
    ),
)
TURNED = Text(
    "points.turned",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: its table stands on its side and was turned; lines count as in the turned one of {count} lines.",
    ),
)
_BLOCK = 1 << 22
#: A file that still grows after so many looks is read as far as that.
_MOST_READS = 100
_MARKS = (
    (codecs.BOM_UTF8, "utf-8-sig"),
    (codecs.BOM_UTF32_LE, "utf-32"),
    (codecs.BOM_UTF32_BE, "utf-32"),
    (codecs.BOM_UTF16_LE, "utf-16"),
    (codecs.BOM_UTF16_BE, "utf-16"),
)


#: Encodings before Unicode, the likelier first; most of what is not UTF-8 is one of Windows.
_OLD = (
    "cp1252", "cp1250", "cp1251", "cp1253", "cp1254", "cp1257", "iso8859-2", "iso8859-5", "iso8859-7", "koi8-r",
    "cp1255", "cp1256", "cp1258", "cp874", "shift_jis", "cp949", "gb18030", "big5", "euc_jp",
    "cp437", "cp850", "cp852", "cp866", "mac-roman", "latin-1",
)  # fmt: skip
_HEAD_LINES = 20
_SPOKEN = {
    **{name: f"Windows-{name[2:]}" for name in _OLD if name.startswith("cp125")},
    **{name: name.upper() for name in _OLD if not name.startswith("cp125")},
    "latin-1": "Latin-1",
}


@dataclass(frozen=True)
class TableForm:
    """What is known of a table that was no text. ``headed``: its first line is the header; ``crs``: of its geometries
    (WKT), "" for none.
    """

    headed: bool
    crs: str = ""


@dataclass(frozen=True)
class TextSource:
    """A text file in memory.

    ``data``: its text as UTF-8 without byte order mark, every line ended by one LF (LF, CRLF and CR in
    the file count alike). ``lines``: how many lines that is. ``cut_off``: the file's last line had no
    line end. ``encoding``: what the file was written in; ``messages``: what was assumed. ``stood``: the lines as they
    stood, where ``data`` differs from them within lines. ``table``: a table that GDAL read, None for text.
    ``said``: what else counts as if it stood above the points, ``below``: as if it stood below.
    """

    file: str
    data: bytes
    lines: int
    cut_off: bool
    encoding: str
    messages: Tuple[Message, ...] = ()
    stood: bytes = b""
    table: Optional[TableForm] = None
    said: Tuple[str, ...] = ()
    below: Tuple[str, ...] = ()

    def texts(self, numbers: Sequence[int]) -> List[str]:
        """The lines of these numbers (from 1) as they stood in the file."""
        if not len(numbers):
            return []
        data = self.stood or self.data
        ends = np.flatnonzero(np.frombuffer(data, np.uint8) == 10)
        starts = np.concatenate([[0], ends[:-1] + 1])
        return [data[starts[i - 1] : ends[i - 1]].decode() for i in numbers]

    def first_lines(self, comment: str, most: int) -> List[str]:
        """At most so many of its first lines that are neither blank nor comments."""
        lines = (text for _, text in self.each_line() if text.strip())
        return list(islice((text for text in lines if not (comment and text.lstrip().startswith(comment))), most))

    def each_line(self) -> Iterator[Tuple[int, str]]:
        """Line number from 1 and text of each line."""
        start, number = 0, 1
        while start < len(self.data):
            end = self.data.index(b"\n", start)
            yield number, self.data[start:end].decode()
            start, number = end + 1, number + 1

    def blocks(self, size: int = 1 << 20) -> Iterator[Tuple[int, int]]:
        """Byte ranges of whole lines, about ``size`` bytes each."""
        start = 0
        while start < len(self.data):
            end = self.data.rfind(b"\n", start, start + size) + 1 or self.data.index(b"\n", start) + 1
            yield start, end
            start = end


def load_text(path: PathLike, encoding: Optional[str] = None, layer: str = "") -> TextSource:
    """Read a text file whole.

    Without ``encoding``: by the byte order mark, else UTF-16 when every second byte is zero, else UTF-8,
    else (with a message) Windows-1252 or Latin-1. Raises SurveyError for a missing, empty or binary
    file, a folder, and text that is not in ``encoding``.
    """
    return decoded(os.fspath(path), read_bytes(path), encoding, layer)


def decoded(file: str, raw: bytes, encoding: Optional[str] = None, layer: str = "") -> TextSource:
    """As :func:`load_text`, of what was read already: text, or what GDAL makes a table of."""
    from .gdal_source import kind_of, load_through_gdal
    from .turned_tables import turned

    kind = kind_of(file, raw)
    table = None if kind else table_in(raw)
    if table is not None:
        source = text_of_bytes(file, table.text.encode("utf-8", "replace"), "utf-8")
        notes = (message(TABLE_OF, file=file, kind=table.kind, count=source.lines),)
        return replace(source, messages=notes, table=TableForm(table.headed), cut_off=False)
    if kind:
        return load_through_gdal(file, raw, kind, layer, encoding)
    plain = text_of_bytes(file, raw, encoding)
    upright = turned(plain)
    if upright is None:
        return plain
    source = text_of_bytes(file, upright.text.encode("utf-8", "replace"), "utf-8")
    turning: Tuple[Message, ...] = (*plain.messages, message(TURNED, file=file, count=source.lines))
    return replace(source, messages=turning, table=TableForm(True), cut_off=False)


def text_of_bytes(file: str, raw: bytes, encoding: Optional[str] = None) -> TextSource:
    """Text from its bytes."""
    notes: Tuple[Message, ...] = ()
    if encoding is None:
        encoding, assumed = _find_encoding(raw)
        if assumed:
            notes = (message(ENCODING_ASSUMED, file=file, encoding=_SPOKEN[encoding]),)
    text = _as_utf8(raw, encoding, file).rstrip(b"\0")  # as a logger leaves that lost its power
    if not text[:_BLOCK].strip(b"\r\n\t ") and not text.strip(b"\r\n\t "):
        raise SurveyError(EMPTY, file=file)
    if _is_binary(text):
        raise SurveyError(BINARY, file=file)
    if b"\r" in text:
        text = text.replace(b"\r\n", b"\n").replace(b"\r", b"\n")
    cut_off = not text.endswith(b"\n")
    if cut_off:
        text += b"\n"
    lines = int(np.count_nonzero(np.frombuffer(text, np.uint8) == 10))
    plain = joined_quotes(_with_plain_signs(text))
    return TextSource(file, plain, lines, cut_off, encoding, notes, b"" if plain is text else text)


#: Blanks that do not break, and thin ones, as a blank; the minus sign as a hyphen; upright lines of boxes as a
#: bar; what has no width as nothing.
_PLAIN_SIGNS = tuple(
    (sign.encode(), plain)
    for plain, signs in (
        (b" ", "\u00a0\u202f\u2007\u2009\u200a\u3000"),
        (b"-", "\u2212"),
        (b"|", "\u2502\u2503\u2551\u00a6\uff5c"),
        (b"", "\u200b\ufeff\u200e\u200f"),
        (b";", "\u061b\uff1b"),
        (b",", "\u060c\u3001"),
    )
    for sign in signs
)
#: Digits and marks of other scripts: Arabic, Persian, Devanagari, and the wide ones of East Asia.
_DIGITS = (
    *((chr(first + i).encode(), str(i).encode()) for first in (0x0660, 0x06F0, 0x0966, 0xFF10) for i in range(10)),
    *(
        (sign.encode(), plain)
        for sign, plain in (("\u066b", b"."), ("\uff0e", b"."), ("\uff0c", b","), ("\u066c", b""))
    ),
)


def _with_plain_signs(text: bytes) -> bytes:
    if not text.isascii():
        for sign, plain in (*_PLAIN_SIGNS, *_DIGITS):
            if sign in text:
                text = text.replace(sign, plain)
    return text


def read_bytes(path: PathLike) -> bytes:
    """All of a file, a pipe too, and of a file that grows what stands in it by the end. Raises SurveyError."""
    file = os.fspath(path)
    if os.path.isdir(file):
        raise SurveyError(FOLDER, file=file)
    try:
        with open(file, "rb") as stream:
            data = stream.read()
            for _ in range(_MOST_READS):
                more = stream.read()  # what was added meanwhile
                if not more:
                    break
                data += more
            return data
    except FileNotFoundError as error:
        raise SurveyError(MISSING, file=file) from error
    except (OSError, ValueError) as error:  # ValueError: a NUL in the path
        reason = getattr(error, "strerror", None) or str(error)
        raise SurveyError(UNREADABLE, file=file, reason=reason) from error


def _find_encoding(raw: bytes) -> Tuple[str, bool]:
    """Encoding of the bytes, and whether it is only assumed."""
    for mark, encoding in _MARKS:
        if raw.startswith(mark):
            return encoding, False
    head = np.frombuffer(raw, np.uint8, min(len(raw), 1 << 12))
    even, odd = np.mean(head[0::2] == 0) if len(head) else 0, np.mean(head[1::2] == 0) if len(head) > 1 else 0
    if odd > 0.4 and even < 0.05:
        return "utf-16-le", False
    if even > 0.4 and odd < 0.05:
        return "utf-16-be", False
    if _is_utf8(raw):
        return "utf-8", False
    return _likeliest(raw), True


def _likeliest(raw: bytes) -> str:
    """The encoding in which most words of the first lines are header words known; Windows-1252
    where none has more, or Latin-1 where that has no letter for a byte.
    """
    head = b"\n".join(raw[: 1 << 14].splitlines()[:_HEAD_LINES])
    known = {name: _words_known(head, name) for name in _OLD}
    ranked = sorted(_OLD, key=lambda name: -known[name])
    return next(name for name in ranked if _can_be(raw, name))  # Latin-1 always can


def _can_be(raw: bytes, encoding: str) -> bool:
    try:
        raw.decode(encoding)
    except UnicodeDecodeError:
        return False
    # Latin-1 and its kin have control characters at 0x80..0x9f, where others have letters and signs.
    return encoding == "latin-1" or not encoding.startswith("iso8859") or not re.search(rb"[\x80-\x9f]", raw)


def _words_known(head: bytes, encoding: str) -> int:
    text = head.decode(encoding, "replace")
    words = {word for word in re.split(r"[,;|\t\n]| {2,}", text) if not word.isascii()}
    read = [read_word(word) for word in words]
    return sum(bool(word.role or (word.doubtful and word.unit)) for word in read)


def _is_utf8(raw: bytes) -> bool:
    if raw.isascii():
        return True
    decoder = codecs.getincrementaldecoder("utf-8")()
    try:
        for start in range(0, len(raw), _BLOCK):
            decoder.decode(raw[start : start + _BLOCK])
        decoder.decode(b"", final=True)
    except UnicodeDecodeError:
        return False
    return True


def _as_utf8(raw: bytes, encoding: str, file: str) -> bytes:
    try:
        name = codecs.lookup(encoding).name
        fine = name in ("utf-8", "utf-8-sig") and _is_utf8(raw)
        text = raw if fine else raw.decode(encoding).encode("utf-8")
    except (LookupError, TypeError) as error:
        raise SurveyError(UNKNOWN_ENCODING, file=file, encoding=encoding) from error
    except ValueError as error:  # UnicodeError, and a NUL in the encoding's name
        reason = " ".join(str(getattr(error, "reason", error)).split())[:80]
        raise SurveyError(WRONG_ENCODING, file=file, encoding=encoding, reason=reason) from error
    return text[3:] if text.startswith(codecs.BOM_UTF8) else text


def _is_binary(text: bytes) -> bool:
    """A NUL anywhere, or over a tenth of the first 64 KiB control characters."""
    if b"\0" in text:
        return True
    head = np.frombuffer(text, np.uint8, min(len(text), 1 << 16))
    control = (head < 32) | (head == 127)
    for allowed in b"\t\n\r\f\x1a":
        control &= head != allowed
    return bool(control.mean() > 0.1)
