package main

func (d *desk) showLesson(topic string) error { return usage("", "no lesson yet: %q", topic) }
