"""What the desk remembers of the plan and of added tools: which is out of date, and why."""

import json
from pathlib import Path

import pytest

from plugin.gui.toolbook import State, Tool, ToolBook, own_source


def stamp(path):
    return Path(path).read_text(encoding="utf-8")


def tool(name):
    def parameters(book):
        folder = Path(book.settings["folder"])
        return {
            "INPUT": str(folder / "surface.txt"),
            "SCALE": book.settings["scale"],
            "OUTPUT": str(folder / f"{name}.txt"),
        }

    return Tool(name, name, parameters, ("OUTPUT",))


@pytest.fixture
def book(tmp_path):
    (tmp_path / "surface.txt").write_text("1,2,3\n")
    return ToolBook([tool("plan"), tool("slopes")], {"folder": str(tmp_path), "scale": 500}, stamp)


def run(book, key, **options):
    output = book.parameters(key)["OUTPUT"]
    Path(output).write_text(key)
    book.record(key, options, {"OUTPUT": output})


def states(book):
    return {key: book.state(key) for key in book.tools}


def test_nothing_is_done_at_first(book):
    assert set(states(book).values()) == {State.EMPTY}
    assert book.to_do() == ["plan", "slopes"]


def test_a_tool_is_done_until_what_it_was_made_from_changes(book, tmp_path):
    run(book, "plan")
    assert states(book) == {"plan": State.DONE, "slopes": State.EMPTY}
    (tmp_path / "surface.txt").write_text("1,2,3\n")  # written again, the same
    assert book.state("plan") is State.DONE
    (tmp_path / "surface.txt").write_text("1,2,4\n")
    assert book.state("plan") is State.STALE
    run(book, "plan")
    book.settings["scale"] = 250
    assert book.state("plan") is State.STALE
    book.settings["scale"] = 500
    assert book.state("plan") is State.DONE, "as it was made"


def test_its_own_product_does_not_make_it_stale(book, tmp_path):
    run(book, "plan")
    (tmp_path / "plan.txt").write_text("changed by hand")
    assert book.state("plan") is State.DONE
    (tmp_path / "plan.txt").unlink()
    assert book.state("plan") is State.EMPTY


def test_options_go_before_the_plain_parameters(book):
    run(book, "plan", SCALE=200)
    assert book.parameters("plan")["SCALE"] == 200
    book.settings["scale"] = 250
    assert book.state("plan") is State.DONE, "the option stands over it"


def test_a_failure_stays_until_it_runs(book):
    book.entries["plan"].failure = "no paper"
    assert book.state("plan") is State.FAILED
    run(book, "plan")
    assert book.state("plan") is State.DONE


def test_an_added_tool_comes_and_goes(book):
    book.add(tool("water"))
    assert book.to_do() == ["plan", "slopes", "water"]
    run(book, "water")
    book.remove("water")
    assert "water" not in book.entries


def test_the_project_keeps_it_with_its_paths(book, tmp_path):
    book.settings["added"] = ["water"]
    book.add(tool("water"))
    run(book, "water", STYLE=["./a", "plain text"])
    text = book.to_text(lambda path: path.replace(str(tmp_path), "HERE"))
    assert str(tmp_path) not in text
    other = ToolBook([tool("plan")], {"folder": "", "scale": 1}, stamp)
    other.take_text(
        text.replace("HERE", str(tmp_path)), str, lambda settings: [tool(name) for name in settings["added"]]
    )
    assert other.settings["scale"] == 500
    assert other.state("water") is State.DONE
    assert other.entries["water"].options == {"STYLE": ["./a", "plain text"]}


@pytest.mark.parametrize("text", ["", "{", "[]", "3", '{"tools": 3}', '{"settings": 3}', '{"tools": {"plan": 3}}'])
def test_what_is_no_book_is_left(book, text):
    book.take_text(text)
    assert book.settings["scale"] == 500
    assert set(book.tools) == {"plan", "slopes"}


def test_what_a_newer_version_wrote_is_left(book):
    run(book, "plan")
    told = json.loads(book.to_text())
    told["tools"]["plan"]["colour"] = "blue"
    told["tools"]["unknown"] = {"made_from": "x"}
    book.take_text(json.dumps(told))
    assert book.state("plan") is State.DONE
    assert "unknown" not in book.entries


def test_layers_of_the_project_are_told_by_their_sources():
    known = {"layer_1": "/a/b.gpkg|layername=c"}.get
    assert own_source("layer_1", known) == "/a/b.gpkg|layername=c"
    assert own_source(["layer_1", "x"], known) == ["/a/b.gpkg|layername=c", "x"]
    assert own_source(3, known) == 3
