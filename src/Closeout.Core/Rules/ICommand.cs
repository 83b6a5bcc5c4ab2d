namespace Closeout.Rules;

/// <summary>What somebody asks to have recorded. It knows its own rule.</summary>
public interface ICommand
{
    /// <summary>Decides on the book as it stands. Everything it accepts, the fold takes.</summary>
    Decision Decide(Depot depot);
}

/// <summary>A command whose answer may look wrong: then it is asked again, and only a person can know.</summary>
public interface IAskedAgain : ICommand
{
    /// <summary>The same, said a second time: it is recorded.</summary>
    ICommand Surely();
}
