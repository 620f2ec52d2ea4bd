"""A report of the core on paper: its HTML on pages of a PDF, with text as text.

Qt's own rich text lays it out. It knows tables and pictures but not all of a browser's styles, so what the report says
in these is said again in its words.
"""

from __future__ import annotations

import re
from typing import Callable, Tuple, Union

from qgis.PyQt.QtCore import QByteArray, QCoreApplication, QMarginsF, QRectF, QSizeF, Qt
from qgis.PyQt.QtGui import QColor, QFont, QImage, QPageLayout, QPageSize, QPainter, QPdfWriter, QTextDocument

from ..core.files import replace_file
from ..core.handover.pdf_order import settle_pdf
from ..core.progress import Progress

translate = QCoreApplication.translate

_DPI = 300
_CSS_DPI = 96  # in which HTML gives lengths
_PADDING = 5  # of table cells, in dots of the paper
_MARGIN = 15.0  # mm
_FOOT = 8.0  # mm
_STYLE = """
body { color: #252525; } h1 { font-size: 17pt; } h2 { font-size: 13pt; color: #543005; } p, li { font-size: 9pt; }
td, th { font-size: 8pt; } th { background-color: #f0ebe3; } p.caption { font-size: 9pt; font-weight: 600; }
p.note { font-size: 8pt; color: #404040; } td.text { font-family: monospace; font-size: 7pt; }
"""


def write_pages(html: str, path: str, title: str, progress: Progress) -> int:
    """Write a report (HTML as :mod:`..core.report.markup` makes it) as a PDF on A4; the number of pages.

    The file appears when it is whole. Raises what ``progress`` raises.
    """
    with replace_file(path) as name:
        writer = QPdfWriter(str(name))
        writer.setResolution(_DPI)
        writer.setTitle(title)
        writer.setCreator("Hummock")
        a4 = QPageSize(QPageSize.PageSizeId.A4)
        margins = QMarginsF(_MARGIN, _MARGIN, _MARGIN, _MARGIN)
        writer.setPageLayout(QPageLayout(a4, QPageLayout.Orientation.Portrait, margins, QPageLayout.Unit.Millimeter))
        pages = _draw(html, writer, title, progress)
        del writer  # closes the file
        settle_pdf(name)
    return pages


def _draw(html: str, writer: QPdfWriter, title: str, progress: Progress) -> int:
    whole = writer.pageLayout().paintRectPixels(_DPI)
    foot = _FOOT / 25.4 * _DPI
    size = QSizeF(whole.width(), whole.height() - foot)
    document = QTextDocument()
    document.documentLayout().setPaintDevice(writer)
    document.setDocumentMargin(0)
    document.setDefaultFont(QFont(document.defaultFont().family(), 9))
    document.setDefaultStyleSheet(_STYLE)
    document.setPageSize(size)
    document.setHtml(paper_html(html, size.width() * _CSS_DPI / _DPI, 0.68 * size.height() * _CSS_DPI / _DPI))
    pages = document.pageCount()
    painter = QPainter(writer)
    try:
        for page in range(pages):
            progress(page / pages, "report")
            if page:
                writer.newPage()
            painter.save()
            painter.translate(0, -page * size.height())
            document.drawContents(painter, QRectF(0, page * size.height(), size.width(), size.height()))
            painter.restore()
            _write_foot(painter, QRectF(0, size.height(), size.width(), foot), title, page + 1, pages)
    finally:
        painter.end()
    return pages


def _write_foot(painter: QPainter, place: QRectF, title: str, page: int, pages: int) -> None:
    painter.setFont(QFont(painter.font().family(), 7))
    painter.setPen(QColor("#636363"))
    below = Qt.AlignmentFlag.AlignBottom
    painter.drawText(place, Qt.AlignmentFlag.AlignLeft | below, title)
    said = translate("hummock", "Page {page} of {pages}").format(page=page, pages=pages)
    painter.drawText(place, Qt.AlignmentFlag.AlignRight | below, said)


def paper_html(html: str, width: float, height: float) -> str:
    """The report in what Qt's rich text knows; pictures at most ``width`` by ``height`` pixels of HTML."""
    steps: Tuple[Tuple[str, Union[str, Callable[[re.Match], str]]], ...] = (
        (r"<style>.*?</style>", ""),
        (r"<nav.*?</nav>", ""),
        (r"<(/?)(?:header|main|section)[^>]*>", ""),
        (r'<div class="wide">\n(.*?)</div>', r"\1"),
        (r'<div class="caution"[^>]*>(.*?)</div>', _caution),
        (r"<table[^>]*>\n<caption>(.*?)</caption>", _table),
        (r'<th scope="(col|row)">', r'<th align="left">'),
        (r'<(t[dh])([^>]*) class="number"', r'<\1\2 align="right"'),
        (r"<figure>\n<img src=\"([^\"]*)\" alt=\"[^\"]*\">", lambda found: _picture(found, width, height)),
        (r"<figcaption>(.*?)</figcaption>\n</figure>", r'<p class="note">\1</p>'),
    )
    for pattern, made in steps:
        html = re.sub(pattern, made, html, flags=re.DOTALL)
    return html


def _caution(found: re.Match) -> str:
    return (
        f'<table width="100%" cellspacing="0" cellpadding="{_PADDING}" bgcolor="#fdf3e7"><tr><td>'
        + found.group(1)
        + "</td></tr></table>"
    )


def _table(found: re.Match) -> str:
    lines = 'style="border-collapse: collapse; border-color: #bdbdbd"'
    return (
        f'<p class="caption">{found.group(1)}</p>\n'
        f'<table width="100%" border="1" cellspacing="0" cellpadding="{_PADDING}" {lines}>'
    )


def _picture(found: re.Match, width: float, height: float) -> str:
    """The picture, as wide as the page unless it would be too high."""
    data = found.group(1).partition("base64,")[2]
    image = QImage.fromData(QByteArray.fromBase64(data.encode()))
    if not image.isNull():
        width = min(width, height * image.width() / image.height())
    return f'<p align="center"><img src="{found.group(1)}" width="{width:.0f}"></p>'
