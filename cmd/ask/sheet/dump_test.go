package sheet
import ("testing";"os")
func TestDump(t *testing.T){ b,_:=HTML(most(),Options{}); os.WriteFile("/tmp/sh/m.html",b,0644) }
