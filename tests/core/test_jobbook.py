"""What the desk remembers: which step is out of date, and why."""

import json
from pathlib import Path

import pytest

from plugin.gui.jobbook import JobBook, State, Step


def steps():
    """file > read > build > draw, and a side branch that is wanted only with a setting."""

    def make(name, **inputs):
        def parameters(book):
            asked = {key: value(book) for key, value in inputs.items()}
            return {**asked, "OUTPUT": str(Path(book.settings["folder"]) / f"{name}.txt")}

        return parameters

    def always(book):
        return True

    return (
        Step("read", "a", (), make("read", INPUT=lambda book: book.settings["file"]), ("OUTPUT",), always),
        Step("build", "b", ("read",), make("build", INPUT=lambda book: book.product("read")), ("OUTPUT",), always),
        Step("test", "c", ("build",), make("test"), ("OUTPUT",), lambda book: bool(book.settings.get("test"))),
        Step("draw", "d", ("build",), make("draw", SCALE=lambda book: book.settings["scale"]), ("OUTPUT",), always),
    )


@pytest.fixture
def book(tmp_path):
    (tmp_path / "survey.csv").write_text("1,2,3\n")
    return JobBook(steps(), {"file": str(tmp_path / "survey.csv"), "folder": str(tmp_path), "scale": 500})


def run(book, *keys, **options):
    for key in keys:
        output = book.parameters(key)["OUTPUT"]
        Path(output).write_text(key)
        book.record(key, options, {"OUTPUT": output})


def states(book):
    return {key: book.state(key).value for key in book.steps}


def test_from_nothing_to_done(book):
    assert set(states(book).values()) == {"empty"}
    assert book.to_do() == ["read", "build", "draw"]
    assert book.missing("draw") == ["build"]
    run(book, "read", "build", "draw")
    assert states(book) == {"read": "done", "build": "done", "test": "empty", "draw": "done"}
    assert book.to_do() == []


def test_a_changed_file_makes_all_that_follows_stale(book):
    run(book, "read", "build", "draw")
    Path(book.settings["file"]).write_text("1,2,3\n4,5,6\n")
    assert states(book)["read"] == states(book)["build"] == states(book)["draw"] == "stale"
    run(book, "read")
    assert states(book)["read"] == "done"
    assert states(book)["build"] == states(book)["draw"] == "stale"
    assert book.to_do() == ["build", "draw"]


def test_a_setting_makes_only_those_stale_that_depend_on_it(book):
    run(book, "read", "build", "draw")
    book.settings["scale"] = 250
    assert states(book) == {"read": "done", "build": "done", "test": "empty", "draw": "stale"}


def test_an_edit_of_a_layer_makes_what_follows_stale_but_not_its_own_step(book):
    run(book, "read", "build", "draw")
    assert book.record_edit(book.product("read") + "|layername=read") == "read"
    assert states(book) == {"read": "done", "build": "stale", "test": "empty", "draw": "stale"}
    assert book.record_edit("/somewhere/else.gpkg") is None
    run(book, "build", "draw")
    assert book.to_do() == []


def test_a_product_that_was_deleted_is_made_again(book):
    run(book, "read", "build", "draw")
    Path(book.product("build")).unlink()
    assert states(book)["build"] == "empty"
    assert book.to_do() == ["build", "draw"]


def test_writing_a_product_anew_from_outside_is_no_change_of_an_input(book):
    """QGIS itself touches files it has open; runs and edits tell what changed."""
    run(book, "read", "build", "draw")
    Path(book.product("read")).write_text("touched, longer")
    assert book.to_do() == []


def test_a_failure_is_kept_until_the_step_has_been_run(book):
    run(book, "read")
    book.record_failure("build", "no points")
    assert book.state("build") is State.FAILED
    assert book.missing("draw") == ["build"]
    run(book, "build")
    assert book.state("build") is State.DONE


def test_a_step_that_becomes_wanted_is_to_do(book):
    run(book, "read", "build", "draw")
    book.settings["test"] = True
    assert book.to_do() == ["test"]


def test_the_book_survives_being_written_down(book):
    run(book, "read", "build")
    run(book, "draw", SCALE=1000)
    text = book.to_text()
    again = JobBook.from_text(steps(), text)
    assert again.settings == book.settings
    assert states(again) == states(book)
    assert again.parameters("draw")["SCALE"] == 1000
    assert json.loads(text)["steps"]["draw"]["run"] == 1


def test_paths_are_kept_as_the_project_keeps_them(book, tmp_path):
    run(book, "read")
    text = book.to_text(lambda path: path.replace(str(tmp_path), "."))
    assert str(tmp_path) not in text.replace(book.entries["read"].made_from, "")
    again = JobBook.from_text(steps(), text, lambda path: path.replace(".", str(tmp_path), 1))
    assert again.state("read") is State.DONE


@pytest.mark.parametrize("text", ["", "{", "[]", '{"steps": {"read": 5}}', '{"steps": {"gone": {"run": 3}}}'])
def test_what_is_no_book_gives_an_empty_one(text):
    assert set(JobBook.from_text(steps(), text).entries) == {"read", "build", "test", "draw"}
