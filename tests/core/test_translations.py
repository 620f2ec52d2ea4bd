"""The translations: every text of the code in every language, with its placeholders and its markup."""

import importlib.machinery
import importlib.util
import re
import string
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
LANGUAGES = ["de", "es", "fr"]
TAG = re.compile(r"</?[a-zA-Z][^>]*>")
OPTION = re.compile(r"(?<![\w-])--[a-z]+(?:-[a-z]+)*")


def collector():
    """The script that collects texts, as a module."""
    loader = importlib.machinery.SourceFileLoader("collect_texts", str(ROOT / ".ci" / "i18n"))
    module = importlib.util.module_from_spec(importlib.util.spec_from_loader(loader.name, loader))
    loader.exec_module(module)
    return module


@pytest.fixture(scope="module")
def collected():
    return {(context, text) for context, texts in collector().collect().items() for text in texts}


@pytest.fixture(scope="module", params=LANGUAGES)
def translated(request):
    return collector().translations(ROOT / "i18n" / f"hummock_{request.param}.ts")


def fields(text):
    """Name and format of each placeholder, sorted."""
    return sorted((name, form, kind) for _, name, form, kind in string.Formatter().parse(text) if name is not None)


def test_the_collected_texts_are_those_of_the_code(collected):
    root = collector().ElementTree.parse(ROOT / "i18n" / "hummock_en.ts").getroot()
    told = {
        (context.findtext("name"), message.findtext("source"))
        for context in root.iter("context")
        for message in context.iter("message")
    }
    assert told == collected, "run make i18n"


def test_every_text_is_translated(translated, collected):
    missing = sorted(text for context, text in collected if not translated.get((context, text), "").strip())
    assert missing == []
    assert set(translated) <= collected, "run make i18n"


def test_placeholders_are_those_of_the_source(translated):
    wrong = []
    for (_, text), said in translated.items():
        try:
            same = fields(text) == fields(said)
        except ValueError:  # braces that are no placeholders
            same = text.count("{") == said.count("{") and text.count("}") == said.count("}")
        if not same:
            wrong.append((text, said))
    assert wrong == []


@pytest.mark.parametrize("pattern", [TAG, OPTION], ids=["markup", "options"])
def test_markup_and_options_are_those_of_the_source(translated, pattern):
    wrong = [
        (text, said)
        for (_, text), said in translated.items()
        if sorted(pattern.findall(text)) != sorted(pattern.findall(said))
    ]
    assert wrong == []


def test_translations_are_no_copies(translated):
    """Long texts that are the same as in English were forgotten."""
    copies = [
        text for (_, text), said in translated.items() if said == text and len(re.findall(r"\b[a-z]{3,}\b", text)) > 4
    ]
    assert copies == []
